import { type BitOrder, readBits, writeBits } from './bits.ts';
import { halfToNumber, numberToHalf } from './float16.ts';
import type { FormParts } from './form.ts';

/** The number in a form that begins at a bit: an integer is exact, a float may be NaN or infinite. */
export function readNumber(bytes: Uint8Array, atBit: number, form: FormParts, order: BitOrder): number {
  const { kind, bits } = form;
  if (kind === 'float') return readFloat(bytes, atBit, bits, order);
  const code = readBits(bytes, atBit, bits, order);
  return kind === 'signed' && code >= 2 ** (bits - 1) ? code - 2 ** bits : code;
}

/** Writes a number as {@link readNumber} reads it; an integer must lie in the range of its form. */
export function writeNumber(bytes: Uint8Array, atBit: number, form: FormParts, order: BitOrder, value: number): void {
  const { kind, bits } = form;
  if (kind === 'float') writeFloat(bytes, atBit, bits, order, value);
  else writeBits(bytes, atBit, bits, order, value < 0 ? value + 2 ** bits : value);
}

function readFloat(bytes: Uint8Array, atBit: number, bits: number, order: BitOrder): number {
  if (bits === 16) return halfToNumber(readBits(bytes, atBit, 16, order));
  const view = new DataView(new ArrayBuffer(8));
  for (let half = 0; half < bits / 32; half += 1) {
    view.setUint32(4 * half, readBits(bytes, atBit + 32 * half, 32, order), order === 'little');
  }
  return bits === 32 ? view.getFloat32(0, order === 'little') : view.getFloat64(0, order === 'little');
}

function writeFloat(bytes: Uint8Array, atBit: number, bits: number, order: BitOrder, value: number): void {
  if (bits === 16) return writeBits(bytes, atBit, 16, order, numberToHalf(value));
  const view = new DataView(new ArrayBuffer(8));
  if (bits === 32) view.setFloat32(0, value, order === 'little');
  else view.setFloat64(0, value, order === 'little');
  for (let half = 0; half < bits / 32; half += 1) {
    writeBits(bytes, atBit + 32 * half, 32, order, view.getUint32(4 * half, order === 'little'));
  }
}
