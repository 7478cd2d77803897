import type { ClockKind } from './clock.ts';
import type { DateOrder } from './date-order.ts';
import type { Encoding } from './encoding.ts';
import type { NumberForm } from './number-form.ts';
import type { FieldDelimiter } from './split-fields.ts';

/** What stands in the fields of a column. */
export type FieldKind =
  /** numbers */
  | 'number'
  /** readings of a clock, all of one kind */
  | ClockKind
  /** words, of which few are different: the code of a person, a side */
  | 'word'
  /** anything; not read */
  | 'passed-over';

/** How the rows of a table are written. */
export interface RowForm extends NumberForm {
  readonly encoding: Encoding;
  readonly delimiter: FieldDelimiter;
  /** one for each column */
  readonly kinds: readonly FieldKind[];
  /** how dates are read that can be read in several orders; null where there are none */
  readonly dates: DateOrder | null;
  /** names as the header spells them; null without a header */
  readonly names: readonly string[] | null;
  /** the row of groups above the names, which then stand behind their groups; null without one */
  readonly groupRow: readonly string[] | null;
  /** the row of units below the names; null without one */
  readonly unitRow: readonly string[] | null;
  /** line of the first row, counted from 1: what stands above it is passed over */
  readonly dataLine: number;
  /** texts, in lower case, that stand where a value is missing */
  readonly missing: ReadonlySet<string>;
}

/** What a reader meets beside rows; each call may throw to end the reading. */
export interface RowWatcher {
  blank(line: number): void;
  remark(line: number, text: string): void;
  /** the header or the row of units again */
  repeated(line: number): void;
  /** a line that is no row: another number of fields, or quotation marks that do not fit */
  noRow(line: number, text: string, fields: readonly string[] | undefined): void;
  /** a field that stands for a missing value */
  missing(line: number, columnIndex: number, text: string): void;
  /** a field that is nothing of its column; its row is left out unless this throws */
  unreadable(line: number, columnIndex: number, text: string): void;
  /** the last line has no line end; whether it is read all the same */
  openEnd(line: number, text: string, fields: readonly string[] | undefined): boolean;
}

/** The name of a column, or its number where it has none. */
export function fieldLabel(names: readonly string[] | null, columnIndex: number): string {
  const name = names?.[columnIndex];
  return name === undefined || name === '' ? `${columnIndex + 1}` : name;
}
