import { RecordError } from './errors.ts';
import type { ManifestEntry, ManifestPlacement } from './manifest-entry.ts';
import { readManifestRow } from './manifest-row.ts';
import { placements } from './quantities.ts';
import { visitQuotedRows } from './quoted-rows.ts';
import { plainName, readTableHeader } from './table-header.ts';
import { isBlank } from './table-row.ts';
import { decodeUtf8 } from './text.ts';

/** What the caller knows beside the bytes. */
export interface ManifestOptions {
  /** name of the manifest, for refusals only */
  readonly file?: string;
  /** the tests that can be assessed */
  readonly tests: readonly string[];
  /** where a sensor may sit; left out, the places of heel raises */
  readonly placements?: readonly ManifestPlacement[];
}

/**
 * The rows of a manifest in its order, each usable or refused with its reason. Needs the column `file`; knows `person,
 * visit, side, test, placement, heel_lever_mm, body_mass_kg, string_rest_length_mm`; carries all others through.
 *
 * @throws {@link RecordError} when the manifest as a whole cannot be read, or has no column `file` or no row
 */
export function readManifest(bytes: Uint8Array, options: ManifestOptions): ManifestEntry[] {
  const at = options.file === undefined ? {} : { file: options.file };
  const { bytes: whole, names, delimiter, line, dataStart } = readTableHeader(bytes, options.file);
  const plain = names.map(plainName);
  if (!plain.includes('file')) {
    const actual = `the columns ${names.map((name) => JSON.stringify(name)).join(', ')}`;
    throw new RecordError('no-file-column', { ...at, row: line, expected: 'a column "file"', actual });
  }
  const text = decodeLines(whole.subarray(dataStart), line + 1, at).replace(/\r\n?/g, '\n');
  const entries: ManifestEntry[] = [];
  const rows = { file: options.file, delimiter, names, text, firstLine: line + 1 };
  const layout = {
    names,
    plain,
    tests: options.tests,
    placements: options.placements ?? placements,
    file: options.file,
  };
  visitQuotedRows(rows, (fields, rowLine) => {
    if (fields.every(isBlank)) return;
    entries.push(readManifestRow(fields, rowLine, layout));
  });
  if (entries.length === 0) {
    const expected = 'rows below the header';
    throw new RecordError('header-only', { ...at, row: line, expected, actual: 'a header and no row' });
  }
  return entries;
}

/** The text, or the refusal of the first line that is not UTF-8. */
function decodeLines(bytes: Uint8Array, firstLine: number, at: { file?: string }): string {
  const lines: string[] = [];
  for (let start = 0; start < bytes.length; ) {
    const lineEnd = bytes.indexOf(10, start);
    const next = lineEnd < 0 ? bytes.length : lineEnd + 1;
    lines.push(decodeUtf8(bytes.subarray(start, next), { ...at, row: firstLine + lines.length }));
    start = next;
  }
  return lines.join('');
}
