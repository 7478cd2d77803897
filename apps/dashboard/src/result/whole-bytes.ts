import type { StoredBytes } from '@surae/storage';

/** The bytes of a stream in one piece, as they are kept. */
export function wholeBytes({ pieces }: Pick<StoredBytes, 'pieces'>): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
