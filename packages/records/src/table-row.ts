import { quoted, RecordError } from './errors.ts';
import { expectedInstead, isUnfinishedNumber, parseNumber } from './number.ts';

/** What the readers need to know about the rows below a header. */
export interface RowLayout {
  readonly file: string | undefined;
  readonly delimiter: string;
  readonly names: readonly string[];
  /** for each column the index of its numbers in the result, or -1 where its text is passed over */
  readonly targets: readonly number[];
}

/** The name of a column, or its number where the header leaves it empty. */
export function columnLabel(names: readonly string[], columnIndex: number): string {
  const name = names[columnIndex];
  return name === undefined || name === '' ? `${columnIndex + 1}` : name;
}

/**
 * The numbers of one row, one for each wanted column, in the order of the targets.
 *
 * @param endsOpen - whether this is the last line of the file and lacks a line end
 * @throws {@link RecordError} `ragged-row`, `cut-off`, `empty-field`, `not-a-number`, `not-finite`, `decimal-comma`
 */
export function rowNumbers(fields: readonly string[], row: number, endsOpen: boolean, layout: RowLayout): number[] {
  const place = layout.file === undefined ? { row } : { file: layout.file, row };
  const columnCount = layout.names.length;
  const cutOff = (columnIndex: number) =>
    new RecordError('cut-off', {
      ...place,
      column: columnLabel(layout.names, columnIndex),
      expected: `a whole row of ${columnCount} fields`,
      actual: `the end of the file in the middle of row ${row}`,
    });
  if (fields.length < columnCount && endsOpen) throw cutOff(fields.length - 1);
  if (fields.length !== columnCount) {
    throw new RecordError('ragged-row', {
      ...place,
      ...(fields.length < columnCount ? { column: columnLabel(layout.names, fields.length) } : {}),
      expected: `${columnCount} fields as in the header`,
      actual: `${fields.length}${raggedHint(fields, layout)}`,
    });
  }
  const numbers: number[] = [];
  for (let columnIndex = 0; columnIndex < columnCount; columnIndex += 1) {
    const target = layout.targets[columnIndex]!;
    if (target < 0) continue;
    const field = fields[columnIndex]!;
    const value = parseNumber(field);
    if (typeof value === 'number') {
      numbers[target] = value;
      continue;
    }
    if (endsOpen && columnIndex === columnCount - 1 && isUnfinishedNumber(field)) throw cutOff(columnIndex);
    throw new RecordError(value, {
      ...place,
      column: columnLabel(layout.names, columnIndex),
      expected: expectedInstead[value],
      actual: value === 'empty-field' ? 'an empty field' : `${quoted(field.trim())}${repeatsHeader(fields, layout)}`,
    });
  }
  return numbers;
}

/** What may be behind a wrong number of fields, in brackets. */
function raggedHint(fields: readonly string[], { delimiter, names }: RowLayout): string {
  if (fields.length === 1) return `, ${quoted(fields[0]!)}`;
  if (fields.length === names.length + 1 && isBlank(fields[names.length]!)) {
    return ' (the last one is empty: does the row end in a delimiter, and the header not?)';
  }
  return delimiter === ',' && fields.length === 2 * names.length ? ' (are these decimal commas?)' : '';
}

function repeatsHeader(fields: readonly string[], { names }: RowLayout): string {
  return fields.every((field, index) => field.trim() === names[index]) ? ' (the header again)' : '';
}

/** Whether a line without delimiters holds nothing. */
export function isBlank(text: string): boolean {
  return /^[ \t]*$/.test(text);
}
