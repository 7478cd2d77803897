import { ChunkDecoder, decodeText, type Encoding } from '../form/encoding.ts';

/** Most lines of a head that are looked at; ours. */
const MOST_LINES = 600;

/** The first lines of a file as text, without a last one that may go on. */
export function headLines(head: Uint8Array, encoding: Encoding, isWhole: boolean): string[] {
  const decoder = new ChunkDecoder(encoding);
  // a head may end in half a character, which belongs to the last line: that one is left out
  const even = encoding.startsWith('utf-16') && head.length % 2 === 1 && !isWhole ? head.subarray(0, -1) : head;
  const bytes = decoder.push(even);
  const text = decodeText(bytes, decoder.out) ?? new TextDecoder('utf-8').decode(bytes);
  const lines = text.split(/\r\n|\n|\r/);
  if (!isWhole || lines.at(-1) === '') lines.pop();
  return lines.slice(0, MOST_LINES);
}
