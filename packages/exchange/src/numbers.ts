/**
 * A value for a file with every number in it cut to nine significant digits: far below any uncertainty, and free of the
 * last bits of binary arithmetic.
 */
export function rounded(value: unknown): unknown {
  if (typeof value === 'number') return nineDigits(value);
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, rounded(part)]));
}

/** Powers of ten that a double holds exactly. */
const TENS = Array.from({ length: 23 }, (_, power) => 10 ** power);

/** So near to the middle of two numbers of nine digits, the product below may lie on its other side. */
const NEAR_MIDDLE = 1e-6;

/**
 * A number cut to nine significant digits, as by way of its decimal text. A whole number over a power of ten that is held exactly is
 * the double nearest to that decimal, so most need no text.
 */
export function nineDigits(value: number): number {
  const power = 8 - Math.floor(Math.log10(Math.abs(value)));
  if (power >= 0 && power < TENS.length) {
    const scaled = Math.abs(value) * TENS[power]!;
    const whole = Math.round(scaled);
    const isClear = Math.abs(scaled - Math.floor(scaled) - 0.5) > NEAR_MIDDLE;
    // the logarithm of a power of ten may lie on its other side
    if (isClear && whole >= 1e8 && whole < 1e9) return (Math.sign(value) * whole) / TENS[power]!;
  }
  return Number(value.toPrecision(9));
}

/** The shortest decimal that reads as the same double; the sign of -0 is kept. */
export function decimal(value: number): string {
  return Object.is(value, -0) ? '-0' : String(value);
}
