import type { CellForm } from '../form/cell-form.ts';
import { clockReading } from '../form/clock.ts';
import { joinedNames } from '../form/group-names.ts';
import { numberIn, saysMissing } from '../form/number-form.ts';
import type { FieldKind } from '../form/row-form.ts';
import type { FieldDelimiter } from '../form/split-fields.ts';
import { readUnitText } from './column-name.ts';
import { type DividedLine, fieldsOf } from './delimiter-guess.ts';
import { groupRowProbability } from './group-row-guess.ts';
import { evidence, type Guessed, guessed } from './guessed.ts';

/** The line that names the columns, and the one above it where both name them together. */
export interface HeaderRows {
  /** line of the names, counted from 1 */
  readonly line: number;
  /** one name for each column; where there are groups, each behind its group */
  readonly names: readonly string[];
  /** the row of groups as it stands in the file, empty cells and all; null without one */
  readonly groupRow: readonly string[] | null;
}

/** Where in a head things stand. */
export interface Layout {
  /** line of the first row, counted from 1 */
  readonly dataLine: number;
  readonly kinds: readonly FieldKind[];
  /** names of the columns, or null where the rows have no header */
  readonly header: Guessed<HeaderRows | 'none'>;
  readonly unitRow: Guessed<{ readonly line: number; readonly units: readonly string[] } | 'none'>;
  /** lines above the header, or above the rows */
  readonly preamble: readonly { readonly line: number; readonly text: string }[];
}

/** What each column holds, from the later half of the rows: a preamble may look like one. */
function kindsOf(rows: readonly DividedLine[], form: CellForm): FieldKind[] {
  const later = rows.slice(rows.length >> 1);
  return later[0]!.fields.map((_, column) => {
    const cells = later.map(({ fields }) => fields[column]!).filter((field) => !saysMissing(field));
    if (cells.length === 0) return 'passed-over';
    const numbers = cells.filter((field) => numberIn(field, form) !== undefined).length;
    if (numbers >= 0.5 * cells.length) return 'number';
    const clocks = cells.flatMap((field) => clockReading(field, form.dates)?.kind ?? []);
    return clocks.length >= 0.5 * cells.length ? clocks[0]! : 'word';
  });
}

function isRow(fields: readonly string[] | undefined, kinds: readonly FieldKind[], form: CellForm): boolean {
  if (fields?.length !== kinds.length) return false;
  let read = 0;
  for (const [i, field] of fields.entries()) {
    const kind = kinds[i]!;
    if (kind === 'word' || kind === 'passed-over') continue;
    const isRead =
      kind === 'number' ? numberIn(field, form) !== undefined : clockReading(field, form.dates)?.kind === kind;
    if (isRead) read += 1;
    else if (!saysMissing(field)) return false;
  }
  return read > 0;
}

/** Names may be one fewer where rows end in a delimiter, or one more where the header does. */
function padded(fields: readonly string[], columnCount: number): readonly string[] | undefined {
  if (fields.length === columnCount) return fields;
  if (fields.length === columnCount - 1) return [...fields, ''];
  return undefined;
}

function isNames(fields: readonly string[], form: CellForm): boolean {
  const filled = fields.filter((field) => field.trim() !== '');
  const texts = filled.filter(
    (field) => numberIn(field, form) === undefined && clockReading(field, form.dates) === undefined,
  );
  return filled.length > 0 && texts.length >= 0.6 * fields.length && texts.length >= filled.length / 2;
}

/**
 * Where the rows begin, and what the lines above them are.
 *
 * @param grouped - whether two rows name the columns together, where somebody said so
 */
export function guessLayout(
  lines: readonly string[],
  rows: readonly DividedLine[],
  delimiter: FieldDelimiter,
  form: CellForm,
  grouped?: boolean,
): Layout {
  const kinds = kindsOf(rows, form);
  const first = rows.find(({ fields }) => isRow(fields, kinds, form)) ?? rows[0]!;
  const dataLine = first.line;
  const above = (line: number): { line: number; fields: readonly string[] } | undefined => {
    for (let at = line - 1; at >= 1; at -= 1) {
      const text = lines[at - 1]!;
      if (text.trim() === '') continue;
      const fields = fieldsOf(text.replace(/^#\s?/, ''), delimiter);
      const whole = fields === undefined ? undefined : padded(fields, kinds.length);
      return whole === undefined ? undefined : { line: at, fields: whole.map((field) => field.trim()) };
    }
    return undefined;
  };
  let named = above(dataLine);
  let unitRow: Layout['unitRow'] = guessed('none', 0.98, [evidence('no-unit-row')]);
  if (named !== undefined && isUnits(named.fields)) {
    const higher = above(named.line);
    if (higher !== undefined && isNames(higher.fields, form)) {
      const found = { line: named.line, units: named.fields };
      unitRow = guessed(found, 0.97, [evidence('unit-row', { line: named.line })]);
      named = higher;
    } else if (named.fields.filter((field) => !saysMissing(field)).length > 1) {
      // "s;N" names nothing: N is newton, and no count of samples
      unitRow = guessed({ line: named.line, units: named.fields }, 0.93, [evidence('unit-row', { line: named.line })]);
      named = undefined;
    }
  }
  const hasNames = named !== undefined && isNames(named.fields, form);
  const units = unitRow.value === 'none' ? undefined : unitRow.value?.line;
  const header = hasNames
    ? namedBy(named!, grouped === false ? undefined : above(named!.line), form, grouped)
    : undefined;
  const names = header?.value as HeaderRows | undefined;
  const top = names === undefined ? (units ?? dataLine) : names.line - (names.groupRow === null ? 0 : 1);
  const preamble = lines.slice(0, top - 1).flatMap((text, i) => (text.trim() === '' ? [] : [{ line: i + 1, text }]));
  const none = [evidence('no-header', { line: dataLine })];
  return {
    dataLine,
    kinds,
    header: header ?? guessed<HeaderRows | 'none'>('none', preamble.length === 0 ? 0.97 : 0.8, none),
    unitRow,
    preamble,
  };
}

/** The header, with the row of groups right above it where that is one. */
function namedBy(
  { line, fields }: { readonly line: number; readonly fields: readonly string[] },
  higher: { readonly line: number; readonly fields: readonly string[] } | undefined,
  form: CellForm,
  told: boolean | undefined,
): Guessed<HeaderRows | 'none'> {
  const alone: HeaderRows = { line, names: fields, groupRow: null };
  const because = [evidence('header-line', { line })];
  const probability = higher?.line === line - 1 ? groupRowProbability(higher.fields, fields, form) : undefined;
  if (higher === undefined || probability === undefined) return guessed<HeaderRows | 'none'>(alone, 0.98, because);
  const names = joinedNames(higher.fields, fields);
  const again = fields.find((name, i) => name !== '' && fields.indexOf(name) !== i) ?? '';
  because.push(evidence('group-row', { line: higher.line, names: line, again }));
  const both: HeaderRows = { line, names, groupRow: higher.fields };
  const others = [{ value: alone, probability: 1 - probability }];
  return guessed<HeaderRows | 'none'>(both, told === true ? 1 : probability, because, others);
}

/** How a clock or a calendar is written, in place of a unit: "hh:mm:ss,ms", "dd.mm.yyyy". */
const clockForm = /^(?:[dmyhs]{1,4}[-/.:, T]){1,6}[dmyhsf0]{1,6}$/i;

/** At least one says a unit; of clocks it may be said how they are written. */
function isUnits(fields: readonly string[]): boolean {
  const others = fields.filter((field) => !saysMissing(field) && !clockForm.test(field.trim()));
  return others.length > 0 && others.every((field) => readUnitText(field) !== undefined);
}
