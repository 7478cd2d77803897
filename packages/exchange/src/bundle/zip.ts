import { unzipSync, type Zippable, zipSync } from 'fflate';
import { ExchangeError } from '../errors.ts';
import type { ExportFile } from './export-file.ts';

/** One file of all files: sorted names and a fixed time, so that equal content gives equal bytes. */
export function zipped(files: readonly ExportFile[]): Uint8Array<ArrayBuffer> {
  // the first instant that the format knows, on whichever clock: no time is told
  const mtime = new Date(1980, 0, 1);
  const sorted = [...files].sort((a, b) => (a.name < b.name ? -1 : 1));
  const entries: Zippable = Object.fromEntries(sorted.map(({ name, bytes }) => [name, [bytes, { mtime, level: 6 }]]));
  return zipSync(entries);
}

/**
 * The files of a zip in the order of their names.
 *
 * @throws {@link ExchangeError} `bad-file` when it is none
 */
export function unzipped(bytes: Uint8Array, file: string): ExportFile[] {
  let entries: Record<string, Uint8Array>;
  try {
    entries = unzipSync(bytes);
  } catch (cause) {
    throw new ExchangeError('bad-file', { file, expected: 'a zip', actual: 'other bytes' }, { cause });
  }
  return Object.entries(entries)
    .filter(([name]) => !name.endsWith('/'))
    .map(([name, content]) => ({ name, bytes: content as Uint8Array<ArrayBuffer> }))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}
