import { readByteRows } from './byte-reader.ts';
import { RecordError } from './errors.ts';
import { readQuotedRows } from './quoted-reader.ts';
import { type Delimiter, readTableHeader, type TableHeader } from './table-header.ts';
import type { RowLayout } from './table-row.ts';

/** A table of numbers as a file holds it: no meaning and no units yet. */
export interface Table {
  readonly delimiter: Delimiter;
  /** names of all columns as the header spells them */
  readonly names: readonly string[];
  /** line of the header, counted from 1 */
  readonly headerLine: number;
  readonly rowCount: number;
  /** for each column its numbers, or `undefined` where it was not asked for */
  readonly columns: readonly (Float64Array | undefined)[];
  /** comment lines above the header */
  readonly notes: readonly string[];
  /** which of the two readers read the rows; the numbers are the same */
  readonly reader: 'bytes' | 'papaparse';
  /** line of the file that a row came from, counted from 1 */
  lineOf(rowIndex: number): number;
}

/** What to read and how to name the file in a refusal. */
export interface TableOptions {
  readonly file?: string;
  /** indices of the columns to read as numbers; all when left out */
  readonly columnIndices?: readonly number[];
}

/**
 * A delimited table of numbers in UTF-8: comma, semicolon or tab, CRLF, LF or CR, `#` comments, blank lines.
 *
 * @throws {@link RecordError} see the codes; nothing is skipped or filled in
 */
export function readTable(bytes: Uint8Array, options: TableOptions = {}): Table {
  const header = readTableHeader(bytes, options.file);
  return readTableRows(header, options.columnIndices ?? header.names.map((_, index) => index), options.file);
}

/** How the rows below a header are read where only the named columns become numbers. */
export function layoutOf(
  { delimiter, names }: TableHeader,
  columnIndices: readonly number[],
  file?: string,
): RowLayout {
  return { file, delimiter, names, targets: names.map((_, index) => columnIndices.indexOf(index)) };
}

/** The rows below a header that was read before; only the named columns become numbers. */
export function readTableRows(header: TableHeader, columnIndices: readonly number[], file?: string): Table {
  const layout = layoutOf(header, columnIndices, file);
  const firstLine = header.line + 1;
  const plain = readByteRows(header.bytes, header.dataStart, firstLine, layout);
  const rows = plain ?? readQuotedRows(header.bytes, header.dataStart, firstLine, layout);
  if (rows.rowCount === 0) {
    throw new RecordError('header-only', {
      ...(file === undefined ? {} : { file }),
      row: header.line,
      expected: 'rows of numbers below the header',
      actual: 'a header and no row',
    });
  }
  return {
    delimiter: header.delimiter,
    names: header.names,
    headerLine: header.line,
    rowCount: rows.rowCount,
    columns: layout.targets.map((target) => (target < 0 ? undefined : rows.columns[target])),
    notes: header.notes,
    reader: plain === undefined ? 'papaparse' : 'bytes',
    lineOf: (rowIndex) => rows.lines.lineOf(rowIndex),
  };
}
