import { ExchangeError } from '../errors.ts';
import { writeCsvTable } from '../tables/csv-table.ts';
import { csvwMetadata, readCsvwMetadata } from '../tables/csvw.ts';
import { readJsonLines, writeJsonLines } from '../tables/json-lines.ts';
import { readCsvTable } from '../tables/read-csv-table.ts';
import type { Table } from '../tables/table.ts';
import { textOf, utf8 } from '../utf8.ts';
import { CHECKSUMS, checkSums, checksums } from './checksums.ts';
import type { ExportFile } from './export-file.ts';
import { jsonText } from './json-text.ts';
import { BUNDLE_VERSION } from './provenance.ts';

/** A file of a bundle as it was understood; what nothing reads here stays bytes. */
export type ReadFile = { readonly name: string } & (
  | { readonly is: 'table'; readonly form: 'csv' | 'json-lines'; readonly table: Table }
  | { readonly is: 'metadata'; readonly shape: Omit<Table, 'rows'>; readonly urls: readonly string[] }
  | { readonly is: 'json'; readonly value: unknown }
  | { readonly is: 'bytes'; readonly bytes: Uint8Array<ArrayBuffer> }
);

function shapesOf(files: readonly ExportFile[]): Map<string, Omit<Table, 'rows'>> {
  const shapes = new Map<string, Omit<Table, 'rows'>>();
  for (const { name, bytes } of files) {
    if (!name.endsWith('csv-metadata.json')) continue;
    const folder = name.slice(0, name.lastIndexOf('/') + 1);
    const { shape, urls } = readCsvwMetadata(textOf(bytes, name), name);
    for (const url of urls) shapes.set(`${folder}${url}`, shape);
  }
  return shapes;
}

function jsonOf({ name, bytes }: ExportFile): unknown {
  const text = textOf(bytes, name);
  try {
    return JSON.parse(text);
  } catch (cause) {
    throw new ExchangeError('bad-file', { file: name, expected: 'JSON', actual: text.slice(0, 40) }, { cause });
  }
}

function checkVersion(files: readonly ExportFile[]): void {
  const file = files.find(({ name }) => name === 'provenance.json');
  if (file === undefined) {
    throw new ExchangeError('missing-file', { file: 'provenance.json', expected: 'the file', actual: 'none' });
  }
  const { kind, version } = Object(jsonOf(file)) as { kind?: unknown; version?: unknown };
  const actual = `${JSON.stringify(kind)}, version ${JSON.stringify(version)}`;
  if (kind !== 'surae-study-bundle' || typeof version !== 'number') {
    throw new ExchangeError('bad-file', { file: file.name, expected: 'a study bundle', actual });
  }
  if (version > BUNDLE_VERSION) {
    throw new ExchangeError('newer-version', { file: file.name, expected: `version 1 to ${BUNDLE_VERSION}`, actual });
  }
}

function understood(file: ExportFile, shapes: ReadonlyMap<string, Omit<Table, 'rows'>>): ReadFile {
  const { name, bytes } = file;
  if (name.endsWith('csv-metadata.json'))
    return { name, is: 'metadata', ...readCsvwMetadata(textOf(bytes, name), name) };
  const shape = shapes.get(name.replace(/\.jsonl$/, '.csv'));
  if (shape !== undefined && name.endsWith('.csv')) {
    return { name, is: 'table', form: 'csv', table: readCsvTable(textOf(bytes, name), shape, name) };
  }
  if (shape !== undefined && name.endsWith('.jsonl')) {
    return { name, is: 'table', form: 'json-lines', table: readJsonLines(textOf(bytes, name), shape, name) };
  }
  if (name.endsWith('.json')) return { name, is: 'json', value: jsonOf(file) };
  return { name, is: 'bytes', bytes };
}

/**
 * What the files of a bundle hold, each checked against the list of checksums first.
 *
 * @throws {@link ExchangeError} `missing-file`, `altered`, `newer-version` or `bad-file`, with the file
 */
export function readBundle(files: readonly ExportFile[]): ReadFile[] {
  const list = files.find(({ name }) => name === CHECKSUMS);
  if (list === undefined) {
    throw new ExchangeError('missing-file', { file: CHECKSUMS, expected: 'the file', actual: 'none' });
  }
  checkSums(textOf(list.bytes, CHECKSUMS), files);
  checkVersion(files);
  const shapes = shapesOf(files);
  return files.filter((file) => file !== list).map((file) => understood(file, shapes));
}

function written(file: ReadFile): Uint8Array<ArrayBuffer> {
  switch (file.is) {
    case 'table':
      return utf8(file.form === 'csv' ? writeCsvTable(file.table) : writeJsonLines(file.table));
    case 'metadata':
      return utf8(csvwMetadata(file.shape, file.urls));
    case 'json':
      return utf8(jsonText(file.value));
    case 'bytes':
      return file.bytes;
  }
}

/** The files of a bundle that was read, written anew from what was understood of it. */
export function bundleAgain(read: readonly ReadFile[]): ExportFile[] {
  const files = read.map((file) => ({ name: file.name, bytes: written(file) }));
  const whole = [...files, { name: CHECKSUMS, bytes: utf8(checksums(files)) }];
  return whole.sort((a, b) => (a.name < b.name ? -1 : 1));
}
