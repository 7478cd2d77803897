import { joined } from '../joined.ts';
import { hashOfBytes } from '../seal.ts';

/** Longest line that is read [bytes]; far more than is ever written. */
const longestLine = 256 * 1024 * 1024;

const hashLength = 64;
const newline = 10;
const encoder = new TextEncoder();
const decoder = new TextDecoder('utf-8', { fatal: true });

/** A line of a backup: the SHA-256 of its text, a blank, the text, and the end of the line. */
export function lineOf(text: string): Uint8Array {
  const bytes = encoder.encode(text);
  const hash = encoder.encode(`${hashOfBytes([bytes])} `);
  const line = new Uint8Array(hash.length + bytes.length + 1);
  line.set(hash);
  line.set(bytes, hash.length);
  line[line.length - 1] = newline;
  return line;
}

/** The text of a line without its end; undefined where it does not match its hash. */
export function textOf(line: Uint8Array): string | undefined {
  if (line.length <= hashLength || line[hashLength] !== 32) return undefined;
  const bytes = line.subarray(hashLength + 1);
  try {
    const hash = decoder.decode(line.subarray(0, hashLength));
    return hash === hashOfBytes([bytes]) ? decoder.decode(bytes) : undefined;
  } catch {
    // no text at all
    return undefined;
  }
}

/** Lines of a file that comes in pieces, without their ends; the last one too where its end is missing. */
export async function* linesOf(source: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array, void, undefined> {
  let waiting: Uint8Array[] = [];
  let length = 0;
  for await (const piece of source) {
    let from = 0;
    for (;;) {
      const end = piece.indexOf(newline, from);
      if (end < 0) break;
      yield joined([...waiting, piece.subarray(from, end)]);
      waiting = [];
      length = 0;
      from = end + 1;
    }
    waiting.push(piece.slice(from));
    length += piece.length - from;
    if (length > longestLine) break;
  }
  if (length > 0) yield joined(waiting);
}
