import { sha256Hex } from '@surae/records';
import { ExchangeError } from '../errors.ts';
import type { ExportFile } from './export-file.ts';

/** Name of the list: a line for each file, its SHA-256 and its name, as the usual tools read it. */
export const CHECKSUMS = 'SHA256SUMS.txt';

/** The list of checksums that are known, in the order of the names. */
export function checksumList(sums: readonly { readonly name: string; readonly sha256: string }[]): string {
  const sorted = [...sums].sort((a, b) => (a.name < b.name ? -1 : 1));
  return sorted.map(({ name, sha256 }) => `${sha256}  ${name}\n`).join('');
}

/** The list of the checksums of all files but itself. */
export function checksums(files: readonly ExportFile[]): string {
  const others = files.filter(({ name }) => name !== CHECKSUMS);
  return checksumList(others.map(({ name, bytes }) => ({ name, sha256: sha256Hex(bytes) })));
}

/**
 * Holds files against the list.
 *
 * @throws {@link ExchangeError} `missing-file`, `altered`, or `bad-file` for a file that the list does not know
 */
export function checkSums(list: string, files: readonly ExportFile[]): void {
  const known = new Map(files.map((file) => [file.name, file]));
  known.delete(CHECKSUMS);
  for (const line of list.split('\n').filter((one) => one !== '')) {
    const parts = /^([0-9a-f]{64}) {2}(.+)$/.exec(line);
    if (parts === null)
      throw new ExchangeError('bad-file', { file: CHECKSUMS, expected: 'checksum and name', actual: line });
    const [, sum = '', name = ''] = parts;
    const file = known.get(name);
    if (file === undefined)
      throw new ExchangeError('missing-file', { file: name, expected: 'the file', actual: 'none' });
    const actual = sha256Hex(file.bytes);
    if (actual !== sum) throw new ExchangeError('altered', { file: name, expected: `SHA-256 ${sum}`, actual });
    known.delete(name);
  }
  const [stranger] = known.keys();
  if (stranger !== undefined) {
    throw new ExchangeError('bad-file', {
      file: stranger,
      expected: 'a line in the list of checksums',
      actual: 'none',
    });
  }
}
