import { quoted, RecordError } from './errors.ts';

const signatures: readonly { readonly bytes: readonly number[]; readonly what: string }[] = [
  { bytes: [0x89, 0x50, 0x4e, 0x47], what: 'a PNG picture' },
  { bytes: [0xff, 0xd8, 0xff], what: 'a JPEG picture' },
  { bytes: [0x47, 0x49, 0x46, 0x38], what: 'a GIF picture' },
  { bytes: [0x25, 0x50, 0x44, 0x46], what: 'a PDF document' },
  { bytes: [0x50, 0x4b, 0x03, 0x04], what: 'a workbook or a ZIP archive' },
  { bytes: [0xd0, 0xcf, 0x11, 0xe0], what: 'an old workbook' },
  { bytes: [0x1f, 0x8b], what: 'a gzip archive' },
];

const LF = 10;
const CR = 13;

/** Number of line ends (LF, CRLF or CR) in the first `end` bytes. */
export function countLineEnds(bytes: Uint8Array, end: number): number {
  let count = 0;
  for (let at = 0; at < end; at += 1) {
    const byte = bytes[at]!;
    if (byte === LF || (byte === CR && bytes[at + 1] !== LF)) count += 1;
  }
  return count;
}

/** The text of a file in bytes, without its byte order mark; refuses pictures, archives and UTF-16. */
export function textBytes(bytes: Uint8Array, file?: string): Uint8Array {
  const at = file === undefined ? {} : { file };
  const expected = 'text in UTF-8';
  const starts = (signature: readonly number[]) => signature.every((byte, index) => bytes[index] === byte);
  if (starts([0xff, 0xfe]) || starts([0xfe, 0xff])) {
    throw new RecordError('utf-16', { ...at, expected, actual: 'text in UTF-16 (byte order mark)' });
  }
  const what = foreignFormat(bytes);
  if (what !== undefined) throw new RecordError('binary-file', { ...at, expected, actual: what });
  if (hasUtf16Rhythm(bytes)) {
    throw new RecordError('utf-16', { ...at, expected, actual: 'text in UTF-16 (no byte order mark)' });
  }
  return starts([0xef, 0xbb, 0xbf]) ? bytes.subarray(3) : bytes;
}

/** What a file is whose first bytes are those of a known format that is no text; undefined for any other. */
export function foreignFormat(bytes: Uint8Array): string | undefined {
  return signatures.find((signature) => signature.bytes.every((byte, index) => bytes[index] === byte))?.what;
}

/** Latin letters in UTF-16 have a zero in every other byte; damage does not keep such a rhythm. */
function hasUtf16Rhythm(bytes: Uint8Array): boolean {
  const pairs = Math.min(bytes.length >> 1, 32);
  let even = 0;
  let odd = 0;
  for (let pair = 0; pair < pairs; pair += 1) {
    if (bytes[2 * pair] === 0) even += 1;
    if (bytes[2 * pair + 1] === 0) odd += 1;
  }
  return pairs >= 2 && Math.max(even, odd) >= 0.8 * pairs && Math.min(even, odd) === 0;
}

/** Strict UTF-8 decoding of a piece of a file. */
export function decodeUtf8(bytes: Uint8Array, place: { file?: string; row?: number }): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch (cause) {
    const actual = `bytes that are not UTF-8 in ${quoted(decodeLoosely(bytes))}`;
    throw new RecordError('not-utf-8', { ...place, expected: 'text in UTF-8', actual }, { cause });
  }
}

/** Decoding that puts a replacement mark where the bytes are not UTF-8. */
export function decodeLoosely(bytes: Uint8Array): string {
  return new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
}
