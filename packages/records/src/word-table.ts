import { RecordError } from './errors.ts';
import { unguarded } from './guarded-text.ts';
import { visitQuotedRows } from './quoted-rows.ts';
import { plainName, readTableHeader } from './table-header.ts';
import { isBlank } from './table-row.ts';
import { decodeUtf8 } from './text.ts';

/** A row of words with the line that it stands on. */
export interface WordRow {
  readonly line: number;
  /** the words by the plain name of their column, without blanks around them */
  readonly cells: Readonly<Record<string, string>>;
}

/**
 * The rows of a table that somebody filled in, in UTF-8: comma, semicolon or tab, any line ends, whichever order of columns.
 *
 * @param needed - plain names of columns that it cannot do without
 * @throws {@link RecordError} when it cannot be read as a whole, lacks a column, or has a row of another length
 */
export function readWordTable(bytes: Uint8Array, needed: readonly string[], file?: string): WordRow[] {
  const at = file === undefined ? {} : { file };
  const { bytes: whole, names, delimiter, line, dataStart } = readTableHeader(bytes, file);
  const plain = names.map(plainName);
  const missing = needed.find((name) => !plain.includes(name));
  if (missing !== undefined) {
    const actual = `the columns ${names.map((name) => JSON.stringify(name)).join(', ')}`;
    throw new RecordError('no-table', { ...at, row: line, expected: `a column "${missing}"`, actual });
  }
  const text = decodeUtf8(whole.subarray(dataStart), at).replace(/\r\n?/g, '\n');
  const rows: WordRow[] = [];
  visitQuotedRows({ file, delimiter, names, text, firstLine: line + 1 }, (fields, row) => {
    if (fields.every(isBlank)) return;
    if (fields.length !== names.length) {
      const expected = `${names.length} fields as in the header`;
      throw new RecordError('ragged-row', { ...at, row, expected, actual: `${fields.length}` });
    }
    rows.push({
      line: row,
      cells: Object.fromEntries(plain.map((name, place) => [name, unguarded(fields[place]!.trim())])),
    });
  });
  return rows;
}
