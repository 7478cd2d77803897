/** The number that 16 bits hold. Source: IEEE 754-2019, binary16: 1 sign, 5 exponent, 10 fraction bits, bias 15. */
export function halfToNumber(code: number): number {
  const sign = code & 0x8000 ? -1 : 1;
  const exponent = (code >> 10) & 31;
  const fraction = code & 1023;
  if (exponent === 31) return fraction === 0 ? sign * Infinity : NaN;
  return exponent === 0 ? sign * fraction * 2 ** -24 : sign * (1024 + fraction) * 2 ** (exponent - 25);
}

/** The 16 bits nearest to a number, halves to the even neighbour; infinity from 65520 on. Source: IEEE 754-2019, 4.3.1. */
export function numberToHalf(value: number): number {
  if (Number.isNaN(value)) return 0x7e00;
  const sign = value < 0 || Object.is(value, -0) ? 0x8000 : 0;
  const magnitude = Math.abs(value);
  if (magnitude >= 65520) return sign | 0x7c00;
  const exponent = Math.max(-14, floorLog2(magnitude));
  const steps = roundHalfEven(magnitude / 2 ** (exponent - 10));
  // a fraction that rounds up to 2048 carries into the exponent by itself
  return sign | (magnitude < 2 ** -14 ? steps : ((exponent + 14) << 10) + steps);
}

function floorLog2(magnitude: number): number {
  if (magnitude === 0) return -Infinity;
  const near = Math.floor(Math.log2(magnitude));
  return 2 ** near > magnitude ? near - 1 : 2 ** (near + 1) <= magnitude ? near + 1 : near;
}

function roundHalfEven(value: number): number {
  const floor = Math.floor(value);
  const rest = value - floor;
  return rest > 0.5 || (rest === 0.5 && floor % 2 === 1) ? floor + 1 : floor;
}
