import { quoted, RecordError } from './errors.ts';
import { expectedInstead, parseNumber } from './number.ts';
import { visitQuotedRows } from './quoted-rows.ts';
import { ratingColumns } from './rating-columns.ts';
import { readTableHeader } from './table-header.ts';
import { columnLabel, isBlank } from './table-row.ts';
import { decodeUtf8 } from './text.ts';

/** What a table of ratings may be compared across. */
export type RatingFactor = 'rater' | 'day';

/** One value as the file has it; null where the cell is empty. */
export interface RatingCell {
  readonly subject: string;
  readonly rater: string;
  /** empty where the table has no days */
  readonly day: string;
  readonly value: number | string | null;
}

/** Values of subjects by several raters, on several days, or with several devices. */
export interface RatingTable {
  /** as the header spells it; numbers are not converted */
  readonly unit: string;
  /** words where the unit is `verdict`, numbers else */
  readonly kind: 'numbers' | 'words';
  readonly factors: readonly RatingFactor[];
  readonly cells: readonly RatingCell[];
}

/**
 * A table of ratings in UTF-8. Wide: a column `subject` and one column a rater, day or device, each with the same unit in
 * brackets. Long: columns `subject`, `rater` or `day` or both, and `value [unit]`.
 *
 * @throws {@link RecordError} with row and column: what the table lacks, a value that is none, a subject and rater that come twice
 */
export function readRatingTable(bytes: Uint8Array, file?: string): RatingTable {
  const at = file === undefined ? {} : { file };
  const header = readTableHeader(bytes, file);
  const columns = ratingColumns(header.names, { ...at, row: header.line });
  const kind = columns.unit === 'verdict' ? 'words' : 'numbers';
  const text = decodeUtf8(header.bytes.subarray(header.dataStart), at).replace(/\r\n?/g, '\n');
  const cells: RatingCell[] = [];
  const firstRows = new Map<string, number>();
  const rows = { file, delimiter: header.delimiter, names: header.names, text, firstLine: header.line + 1 };
  visitQuotedRows(rows, (fields, row) => {
    if (fields.every(isBlank)) return;
    const place = { ...at, row };
    if (fields.length !== header.names.length) {
      const expected = `${header.names.length} fields as in the header`;
      throw new RecordError('ragged-row', { ...place, expected, actual: `${fields.length}` });
    }
    const named = (index: number): string => {
      const word = fields[index]!.trim();
      const column = columnLabel(header.names, index);
      if (word === '') {
        throw new RecordError('empty-field', { ...place, column, expected: 'a name', actual: 'an empty field' });
      }
      return word;
    };
    const subject = named(columns.subject);
    const day = columns.day === undefined ? '' : named(columns.day);
    for (const column of columns.values) {
      const rater = column.rater ?? (columns.rater === undefined ? '' : named(columns.rater));
      refuseRepeated([subject, rater, day], firstRows, place);
      const label = columnLabel(header.names, column.index);
      cells.push({ subject, rater, day, value: cellValue(fields[column.index]!, kind, { ...place, column: label }) });
    }
  });
  if (cells.length === 0) {
    const expected = 'rows below the header';
    throw new RecordError('header-only', { ...at, row: header.line, expected, actual: 'a header and no row' });
  }
  return { unit: columns.unit, kind, factors: columns.factors, cells };
}

interface Place {
  readonly file?: string;
  readonly row: number;
}

function cellValue(
  field: string,
  kind: RatingTable['kind'],
  place: Place & { column: string },
): number | string | null {
  const word = field.trim();
  if (word === '') return null;
  if (kind === 'words') return word;
  const value = parseNumber(word);
  if (typeof value === 'number') return value;
  const expected = `${expectedInstead[value]}, or nothing where none was taken`;
  throw new RecordError(value, { ...place, expected, actual: quoted(word) });
}

function refuseRepeated(key: readonly string[], firstRows: Map<string, number>, place: Place): void {
  const spelled = JSON.stringify(key);
  const first = firstRows.get(spelled);
  if (first !== undefined) {
    const actual = `${key
      .filter((word) => word !== '')
      .map((word) => quoted(word))
      .join(', ')} again, as in row ${first}`;
    throw new RecordError('repeated-rating', { ...place, expected: 'one value of each subject and rater', actual });
  }
  firstRows.set(spelled, place.row);
}
