import { RecordError } from './errors.ts';
import { splitFields } from './form/split-fields.ts';
import type { ManifestOptions } from './manifest.ts';
import type { ManifestEntry } from './manifest-entry.ts';
import { readManifestRow } from './manifest-row.ts';
import { placements } from './quantities.ts';
import { plainName, readTableHeader, type TableHeader } from './table-header.ts';

/**
 * One row of a manifest whose cells came by their names.
 *
 * @param line - where it came, counted from 1, for refusals only
 */
export function manifestCells(
  cells: Readonly<Record<string, string>>,
  line: number,
  options: ManifestOptions,
): ManifestEntry {
  const names = Object.keys(cells);
  return readManifestRow(Object.values(cells), line, {
    names,
    plain: names.map(plainName),
    tests: options.tests,
    placements: options.placements ?? placements,
    file: options.file,
  });
}

/** Rows of a manifest that come one by one, after the line that names their columns. */
export class ManifestLines {
  readonly names: readonly string[];
  readonly #header: TableHeader;
  readonly #options: ManifestOptions;

  /** @throws {@link RecordError} when the line names no column `file`, or is no header at all */
  constructor(header: string, options: ManifestOptions) {
    this.#header = readTableHeader(new TextEncoder().encode(`${header}\n`), options.file);
    this.#options = options;
    this.names = this.#header.names;
    if (this.names.map(plainName).includes('file')) return;
    throw new RecordError('no-file-column', {
      ...(options.file === undefined ? {} : { file: options.file }),
      row: 1,
      expected: 'a column "file"',
      actual: `the columns ${this.names.map((name) => JSON.stringify(name)).join(', ')}`,
    });
  }

  /** @param at - which line it is, counted from 1, for refusals only */
  entry(line: string, at: number): ManifestEntry {
    const { file, tests, placements: places = placements } = this.#options;
    // a mark that is not closed leaves one field, which is refused as such
    const fields = splitFields(line, this.#header.delimiter) ?? [line];
    const plain = this.names.map(plainName);
    return readManifestRow(fields, at, { names: this.names, plain, tests, placements: places, file });
  }
}
