import { decodeBase64, encodeBase64 } from './base64.ts';

/** Doubles as little-endian bytes in base64: exact, also for -0, and shorter than decimal text. */
export interface PackedNumbers {
  readonly encoding: 'float64-le-base64';
  readonly count: number;
  readonly data: string;
}

export function packNumbers(numbers: Float64Array): PackedNumbers {
  const view = new DataView(new ArrayBuffer(8 * numbers.length));
  for (let i = 0; i < numbers.length; i += 1) view.setFloat64(8 * i, numbers[i]!, true);
  const data = encodeBase64(new Uint8Array(view.buffer));
  return { encoding: 'float64-le-base64', count: numbers.length, data };
}

/** The numbers again, or `undefined` when the data are not that many whole doubles in base64. */
export function unpackNumbers(packed: PackedNumbers): Float64Array | undefined {
  const bytes = decodeBase64(packed.data);
  if (bytes === undefined || bytes.length !== 8 * packed.count) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  return Float64Array.from({ length: packed.count }, (_, i) => view.getFloat64(8 * i, true));
}
