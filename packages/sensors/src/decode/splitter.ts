/** The bytes of one packet or one line, found in a stream. */
export interface FoundPiece {
  readonly kind: 'found';
  readonly bytes: Uint8Array;
  /** where it begins in the stream, its marker included, from 0 */
  readonly atByte: number;
}

/** Something that looked like a packet and was none. */
export interface StreamFault {
  /** where in the stream, from 0 */
  readonly atByte: number;
  readonly expected: string;
  readonly actual: string;
}

/** Bytes that belong to no packet: noise, or a packet that was damaged. A long run comes in pieces. */
export interface SkippedPiece {
  readonly kind: 'skipped';
  readonly bytes: Uint8Array;
  readonly atByte: number;
  /** what was tried in these bytes; none where they did not even begin like a packet */
  readonly faults: readonly StreamFault[];
}

export type StreamPiece = FoundPiece | SkippedPiece;

/**
 * Finds packets in a stream of bytes, in order. Chunks of any size give the same pieces; every byte is in one piece, but for
 * markers, lengths, checks and line ends of what was found.
 */
export interface StreamSplitter {
  push(chunk: Uint8Array): StreamPiece[];
  /** The stream is over: what is left. */
  end(): StreamPiece[];
}

/** A run of skipped bytes is handed on in pieces of so many, so that noise does not pile up [bytes]; ours. */
export const longestSkipped = 1024;

/** Skipped bytes as pieces of at most {@link longestSkipped}, each with its faults. */
export function skippedPieces(bytes: Uint8Array, atByte: number, faults: readonly StreamFault[]): SkippedPiece[] {
  const pieces: SkippedPiece[] = [];
  for (let from = 0; from < bytes.length; from += longestSkipped) {
    const part = bytes.slice(from, from + longestSkipped);
    const start = atByte + from;
    const own = faults.filter((fault) => fault.atByte >= start && fault.atByte < start + part.length);
    pieces.push({ kind: 'skipped', bytes: part, atByte: start, faults: own });
  }
  return pieces;
}

/** One after the other. */
export function joinBytes(...parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const joined = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    joined.set(part, at);
    at += part.length;
  }
  return joined;
}
