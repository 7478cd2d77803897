import { readSync } from 'node:fs';
import { crc32 } from 'node:zlib';
import type { ReadBytes } from '@surae/records';

/** So many bytes are still near the processor when they are looked at. */
const PIECE_BYTES = 2 ** 20;

/** Reads the text of an open file, and keeps a check sum of what was read in turn. */
export class FileBytes {
  readonly #file: number;
  readonly #seen: (bytes: Uint8Array) => void;
  #checkSum = 0;

  /** @param seen - looks at all that is read in turn, for example to hash it */
  constructor(file: number, seen: (bytes: Uint8Array) => void = () => undefined) {
    this.#file = file;
    this.#seen = seen;
  }

  /** CRC-32 of all that was read in turn, by which two readers find out that the file was the same for both. */
  get checkSum(): number {
    return this.#checkSum;
  }

  /** Looks anywhere: not counted as read in turn. A NUL is no text. */
  readonly look: ReadBytes = (into, at) => {
    let filled = 0;
    for (let got = -1; got !== 0 && filled < into.length; filled += got)
      got = readSync(this.#file, into, filled, into.length - filled, at + filled);
    return Buffer.from(into.buffer, into.byteOffset, filled).includes(0) ? 0 : filled;
  };

  readonly next: ReadBytes = (into, at) => {
    const got = this.look(into, at);
    const bytes = into.subarray(0, got);
    this.#checkSum = crc32(bytes, this.#checkSum);
    this.#seen(bytes);
    return got;
  };

  /** Reads what is only looked at; false where it ends early or is no text. */
  pass(from: number, to: number): boolean {
    const room = new Uint8Array(PIECE_BYTES);
    for (let at = from; at < to; ) {
      const got = this.next(room.subarray(0, to - at), at);
      if (got === 0) return false;
      at += got;
    }
    return true;
  }
}
