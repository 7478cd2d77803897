/**
 * Which end of a number comes first. `little`: its least significant bits first, each byte filled from its least significant
 * bit upward. `big`: its most significant bits first, each byte filled from its most significant bit downward. For whole bytes
 * these are little-endian and big-endian.
 */
export type BitOrder = 'little' | 'big';

/** The number without sign in `bits` bits (at most 53) from bit `atBit` of the stream on. */
export function readBits(bytes: Uint8Array, atBit: number, bits: number, order: BitOrder): number {
  let value = 0;
  let place = 1;
  for (let done = 0; done < bits; ) {
    const inByte = (atBit + done) & 7;
    const take = Math.min(8 - inByte, bits - done);
    const byte = bytes[(atBit + done) >>> 3] ?? 0;
    const shift = order === 'little' ? inByte : 8 - inByte - take;
    const part = (byte >>> shift) & ((1 << take) - 1);
    if (order === 'little') {
      value += part * place;
      place *= 2 ** take;
    } else value = value * 2 ** take + part;
    done += take;
  }
  return value;
}

/** Writes a number without sign as {@link readBits} reads it; bits that are set there already stay set. */
export function writeBits(bytes: Uint8Array, atBit: number, bits: number, order: BitOrder, value: number): void {
  for (let done = 0; done < bits; ) {
    const inByte = (atBit + done) & 7;
    const take = Math.min(8 - inByte, bits - done);
    const below = order === 'little' ? done : bits - done - take;
    const part = Math.floor(value / 2 ** below) % 2 ** take;
    const at = (atBit + done) >>> 3;
    const shift = order === 'little' ? inByte : 8 - inByte - take;
    bytes[at] = (bytes[at] ?? 0) | (part << shift);
    done += take;
  }
}
