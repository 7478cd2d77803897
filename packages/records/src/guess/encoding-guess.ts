import { type Encoding, markLength } from '../form/encoding.ts';
import { evidence, type Guessed, guessed } from './guessed.ts';

/** Letters and signs of the languages that headers come in, as Windows-1252 has them. */
const usualSigns = /^[°²³µ·äöüßÄÖÜéèêëçàâîïôûùñáíóúåæøÅÆØãõìò€º–ÉÀ\u00a0]*$/;

/**
 * How the characters of a file are written: by its byte order mark, by the zeros that Latin letters have in UTF-16, else by
 * whether its bytes are UTF-8.
 *
 * @param isWhole - whether the file ends with these bytes: a head may end inside a character
 */
export function guessEncoding(head: Uint8Array, isWhole: boolean): Guessed<Encoding> {
  for (const encoding of ['utf-8', 'utf-16le', 'utf-16be'] as const) {
    if (markLength(head, encoding) > 0) return guessed(encoding, 0.99, [evidence('encoding-mark')]);
  }
  const wide = zeroRhythm(head);
  if (wide !== undefined) return guessed(wide, 0.98, [evidence('encoding-zeros')]);
  const odd = head.findIndex((byte) => byte >= 0x80);
  if (odd < 0) return guessed('utf-8', 0.99, [evidence('encoding-plain')]);
  const end = isWhole ? head.length : lastWhole(head);
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(head.subarray(0, end));
    return guessed('utf-8', 0.98, [evidence('encoding-utf8')]);
  } catch {
    const signs = [...head.filter((byte) => byte >= 0x80)];
    const text = new TextDecoder('windows-1252').decode(Uint8Array.from(signs.slice(0, 200)));
    // the signs of other old code pages fall on control characters and boxes here
    return guessed('windows-1252', usualSigns.test(text) ? 0.95 : 0.7, [
      evidence('encoding-latin', { signs: [...new Set(text)].slice(0, 5).join(' ') }),
    ]);
  }
}

/** Latin letters in UTF-16 have a zero in every other byte; damage does not keep such a rhythm. */
function zeroRhythm(head: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  const pairs = Math.min(head.length >> 1, 64);
  let even = 0;
  let odd = 0;
  for (let pair = 0; pair < pairs; pair += 1) {
    if (head[2 * pair] === 0) even += 1;
    if (head[2 * pair + 1] === 0) odd += 1;
  }
  if (pairs < 2 || Math.max(even, odd) < 0.8 * pairs || Math.min(even, odd) > 0) return undefined;
  return odd > even ? 'utf-16le' : 'utf-16be';
}

/** Where the last whole character of UTF-8 ends. */
function lastWhole(head: Uint8Array): number {
  for (let end = head.length, back = 1; back <= 4; back += 1) {
    const byte = head[end - back]!;
    if (byte < 0x80) return end;
    if (byte >= 0xc0) {
      const length = byte >= 0xf0 ? 4 : byte >= 0xe0 ? 3 : 2;
      return back >= length ? end : end - back;
    }
  }
  return head.length;
}
