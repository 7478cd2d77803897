import { quoted } from '../errors.ts';
import { clockReading } from '../form/clock.ts';
import { namesBelow } from '../form/group-names.ts';
import { numberIn } from '../form/number-form.ts';
import { sameFields } from '../form/row-reader.ts';
import { splitFields } from '../form/split-fields.ts';
import { cellKind } from '../guess/cell-kind.ts';
import { guessDelimiter } from '../guess/delimiter-guess.ts';
import { guessEncoding } from '../guess/encoding-guess.ts';
import { headLines } from '../guess/head-lines.ts';
import type { Recipe } from './recipe.ts';

/** In what a file differs from those that a recipe is for. */
export interface Difference {
  readonly what: 'encoding' | 'delimiter' | 'column-count' | 'column-name' | 'header' | 'group' | 'unit' | 'rows';
  /** line of the file, counted from 1; undefined where it is the whole file */
  readonly line?: number;
  /** column, counted from 1 */
  readonly column?: number;
  readonly expected: string;
  readonly actual: string;
}

/** Where the rows of a file that fits begin, or in what it differs. */
export type Fit =
  | { readonly fits: true; readonly dataLine: number; readonly preamble: readonly string[] }
  | { readonly fits: false; readonly differences: readonly Difference[] };

/** Whether the head of a file is what a recipe is for: encoding, header, units, and rows that can be read. */
export function fitRecipe(head: Uint8Array, isWhole: boolean, recipe: Recipe): Fit {
  const encoding = guessEncoding(head, isWhole).value!;
  const wide = (one: string): boolean => one.startsWith('utf-16');
  if (encoding !== recipe.encoding && (wide(encoding) || wide(recipe.encoding))) {
    return no({ what: 'encoding', expected: recipe.encoding, actual: encoding });
  }
  const lines = headLines(head, recipe.encoding, isWhole);
  return recipe.header === null ? fitRows(lines, recipe) : fitHeader(lines, recipe, recipe.header, encoding);
}

function no(...differences: Difference[]): Fit {
  return { fits: false, differences };
}

/** The fields of a line as names: without the mark of a remark, and as many as there are columns where a last one is empty. */
function namesIn(text: string, delimiter: Recipe['delimiter'], count: number): string[] | undefined {
  let fields = splitFields(text.replace(/^#\s?/, ''), delimiter)?.map((field) => field.trim());
  if (fields?.length === count + 1 && fields.at(-1) === '') fields = fields.slice(0, -1);
  if (fields?.length === count - 1) fields = [...fields, ''];
  return fields;
}

function fitHeader(lines: readonly string[], recipe: Recipe, header: readonly string[], encoding: string): Fit {
  const { groupRow } = recipe;
  const names = groupRow === undefined ? header : namesBelow(groupRow, header)!;
  const isRow = (text: string | undefined, row: readonly string[]): boolean =>
    sameFields(namesIn(text ?? '', recipe.delimiter, row.length) ?? [], row);
  const areNames = lines.map((text) => isRow(text, names));
  let at = areNames.indexOf(true);
  if (at < 0) return no(...unlikeHeader(lines, recipe, names, encoding));
  let top = at;
  if (groupRow !== undefined) {
    const grouped = areNames.findIndex((one, i) => one && isRow(lines[i - 1], groupRow));
    if (grouped < 0) return no(unlikeGroups(lines[at - 1], Math.max(1, at), recipe, groupRow));
    at = grouped;
    top = at - 1;
  }
  let next = at + 1;
  if (recipe.unitRow !== null) {
    while (lines[next]?.trim() === '') next += 1;
    const other = unlikeUnits(lines[next], next + 1, recipe, recipe.unitRow);
    if (other !== undefined) return no(other);
    next += 1;
  }
  return { fits: true, dataLine: next + 1, preamble: lines.slice(0, top).filter((text) => text.trim() !== '') };
}

/** In what the line above the names differs from the row of groups. */
function unlikeGroups(text: string | undefined, line: number, recipe: Recipe, groupRow: readonly string[]): Difference {
  const groups = namesIn(text ?? '', recipe.delimiter, groupRow.length) ?? [];
  const column = groupRow.findIndex((group, i) => group.trim() !== groups[i]);
  if (groups.length === groupRow.length && column >= 0) {
    const actual = quoted(groups[column]!);
    return { what: 'group', line, column: column + 1, expected: quoted(groupRow[column]!), actual };
  }
  const actual = text === undefined ? 'no line above the names' : quoted(text);
  return { what: 'group', line, expected: quoted(groupRow.join(recipe.delimiter)), actual };
}

/** In what a line differs from the row of units. */
function unlikeUnits(
  text: string | undefined,
  line: number,
  recipe: Recipe,
  unitRow: readonly string[],
): Difference | undefined {
  const units = namesIn(text ?? '', recipe.delimiter, unitRow.length) ?? [];
  if (sameFields(units, unitRow)) return undefined;
  const differing = unitRow.findIndex((unit, i) => unit.trim() !== (units[i] ?? '').trim());
  const expected = quoted(unitRow[differing] ?? unitRow.join(recipe.delimiter));
  return { what: 'unit', line, column: differing + 1, expected, actual: quoted(units[differing] ?? text ?? '') };
}

/** What differs from the header, looked for in the line that is most like it. */
function unlikeHeader(
  lines: readonly string[],
  recipe: Recipe,
  header: readonly string[],
  encoding: string,
): Difference[] {
  const division = guessDelimiter(lines);
  const delimiter = division.delimiter.value;
  if (delimiter !== null && delimiter !== recipe.delimiter && division.columnCount > 1) {
    const line = lines.findIndex((text) => sameFields(namesIn(text, delimiter, header.length) ?? [], header));
    const difference = { what: 'delimiter', expected: quoted(recipe.delimiter), actual: quoted(delimiter) } as const;
    return [line < 0 ? difference : { ...difference, line: line + 1 }];
  }
  let best: { line: number; names: string[]; same: number } | undefined;
  for (const [i, text] of lines.slice(0, division.rows[0]?.line ?? lines.length).entries()) {
    const names = namesIn(text, recipe.delimiter, header.length);
    if (names === undefined || text.trim() === '') continue;
    const same = names.filter((name) => name !== '' && header.some((one) => one.trim() === name)).length;
    if (best === undefined || same > best.same) best = { line: i + 1, names, same };
  }
  if (best === undefined || best.same === 0) {
    const expected = `a header ${header.map(quoted).join(', ')}`;
    const actual =
      best === undefined
        ? 'no header'
        : `no such line; line ${best.line} is ${quoted(best.names.join(recipe.delimiter))}`;
    const differences: Difference[] = [{ what: 'header', expected, actual }];
    if (encoding !== recipe.encoding)
      differences.push({ what: 'encoding', expected: recipe.encoding, actual: encoding });
    return differences;
  }
  const { line, names } = best;
  if (names.length !== header.length) {
    return [{ what: 'column-count', line, expected: `${header.length} columns`, actual: `${names.length}` }];
  }
  return header.flatMap((name, i): Difference[] =>
    name.trim() === names[i]
      ? []
      : [{ what: 'column-name', line, column: i + 1, expected: quoted(name), actual: quoted(names[i]!) }],
  );
}

/** Without a header the rows begin with the first line of which every field can be read. */
function fitRows(lines: readonly string[], recipe: Recipe): Fit {
  const form = { decimal: recipe.decimalMark, thousands: recipe.thousandsMark };
  const at = lines.findIndex((text) => {
    if (text.startsWith('#')) return false;
    let fields = splitFields(text, recipe.delimiter);
    if (fields?.length === recipe.fields.length + 1 && fields.at(-1)!.trim() === '') fields = fields.slice(0, -1);
    if (fields?.length !== recipe.fields.length) return false;
    const read = fields.filter((field, i) => {
      const kind = recipe.fields[i]!;
      return kind === 'number'
        ? numberIn(field, form) !== undefined
        : clockReading(field, recipe.dates ?? null)?.kind === kind;
    });
    return read.length > 0;
  });
  if (at < 0) {
    const actual = lines.length === 0 ? 'no line' : `none in the first ${lines.length} lines`;
    return no({ what: 'rows', expected: `rows of ${recipe.fields.length} fields`, actual });
  }
  const isText = (text: string): boolean => text.trim() !== '' && !text.startsWith('#');
  const above = lines.slice(0, at).findLast(isText);
  if (recipe.unitRow !== null) {
    const line = lines.slice(0, at).findLastIndex(isText) + 1;
    const other = unlikeUnits(above, Math.max(1, line), recipe, recipe.unitRow);
    return other === undefined ? { fits: true, dataLine: at + 1, preamble: lines.slice(0, line - 1) } : no(other);
  }
  // a line of names above the rows is a header that the recipe knows nothing of
  const names = above === undefined ? undefined : namesIn(above, recipe.delimiter, recipe.fields.length);
  if (
    recipe.fields.length > 1 &&
    names?.length === recipe.fields.length &&
    names.filter((name) => cellKind(name) === 'word').length > names.length / 2
  ) {
    return no({ what: 'header', line: at, expected: 'rows without a header', actual: quoted(above!) });
  }
  return { fits: true, dataLine: at + 1, preamble: lines.slice(0, at).filter((text) => text.trim() !== '') };
}
