import { documentFault } from '../document-fault.ts';
import { RecordError } from '../errors.ts';
import { namesBelow } from '../form/group-names.ts';
import { findUnit, listUnits, units } from '../units.ts';
import { RECIPE_VERSION, type Recipe, recipeDocument } from './recipe.ts';
import { recipeFingerprint } from './recipe-fingerprint.ts';

/**
 * A recipe out of a text that came from outside: checked in every part, a newer version refused.
 *
 * @throws {@link RecordError} `invalid-document` with the path of the fault, `newer-version`, `hash-mismatch`
 */
export function parseRecipe(text: string, file?: string): Recipe {
  const at = file === undefined ? {} : { file };
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (cause) {
    const actual = cause instanceof Error ? cause.message : String(cause);
    throw new RecordError('invalid-document', { ...at, expected: 'a recipe as JSON', actual }, { cause });
  }
  return recipeOf(value, file);
}

/** The same from a value. */
export function recipeOf(value: unknown, file?: string): Recipe {
  const at = file === undefined ? {} : { file };
  const kind = fieldOf(value, 'kind');
  if (kind !== 'surae-recipe') {
    const actual = kind === undefined ? 'none' : JSON.stringify(kind);
    throw new RecordError('invalid-document', { ...at, path: 'kind', expected: '"surae-recipe"', actual });
  }
  const version = fieldOf(value, 'version');
  if (typeof version === 'number' && Number.isInteger(version) && version > RECIPE_VERSION) {
    const expected = `version ${RECIPE_VERSION}`;
    throw new RecordError('newer-version', { ...at, path: 'version', expected, actual: String(version) });
  }
  const result = recipeDocument.safeParse(value, { reportInput: true });
  if (!result.success) throw documentFault(result.error, at);
  const recipe = result.data;
  const wrong = (path: string, expected: string, actual: string): RecordError =>
    new RecordError('invalid-document', { ...at, path, expected, actual });
  checkColumns(recipe, wrong);
  const fits = recipeFingerprint(recipe);
  if (fits !== recipe.fits) {
    const expected = `the fingerprint of this recipe, ${fits.slice(0, 12)}...`;
    throw new RecordError('hash-mismatch', { ...at, path: 'fits', expected, actual: `${recipe.fits.slice(0, 12)}...` });
  }
  return recipe;
}

function fieldOf(value: unknown, name: string): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, name)
    ? (value as Record<string, unknown>)[name]
    : undefined;
}

/** What the parts of a recipe must have to do with each other. */
function checkColumns(recipe: Recipe, wrong: (path: string, expected: string, actual: string) => RecordError): void {
  const { fields, header, groupRow, unitRow, time, columns, people, decimalMark, thousandsMark, delimiter } = recipe;
  const count = fields.length;
  for (const [path, row] of [
    ['header', header],
    ['groupRow', groupRow ?? null],
    ['unitRow', unitRow],
  ] as const) {
    if (row !== null && row.length !== count) throw wrong(path, `${count} fields, as many as kinds`, `${row.length}`);
  }
  if (groupRow !== undefined && (header === null || namesBelow(groupRow, header) === undefined)) {
    throw wrong(
      'groupRow',
      'groups with which the names of the header begin',
      header === null ? 'no header' : 'others',
    );
  }
  if (thousandsMark === decimalMark)
    throw wrong('thousandsMark', 'another mark than that of decimals', `"${thousandsMark}"`);
  if (delimiter === decimalMark && delimiter !== ',')
    throw wrong('delimiter', 'another than the decimal mark', delimiter);
  const clocks = ['time-of-day', 'date-time', 'instant'];
  if (time.column !== null) {
    const kind = fields[time.column];
    const wanted = time.unit === 'clock' ? clocks : ['number'];
    if (time.unit !== 'sample' && !wanted.includes(kind ?? 'none')) {
      throw wrong('time.column', `a column of kind ${wanted.join(' or ')}`, kind ?? 'no such column');
    }
  } else if (time.unit !== 'sample')
    throw wrong('time.unit', '"sample", since no column holds times', `"${time.unit}"`);
  for (const [i, column] of (time.alike ?? []).entries()) {
    const kind = fields[column];
    if (kind !== fields[time.alike![0]!] || kind === 'passed-over' || kind === 'word' || kind === undefined)
      throw wrong(`time.alike[${i}]`, 'columns of numbers or of one clock', kind ?? 'no such column');
  }
  const seen = new Set<string>();
  for (const [i, { column, quantity, axis, unit, side }] of columns.entries()) {
    const path = `columns[${i}]`;
    if (fields[column] !== 'number')
      throw wrong(`${path}.column`, 'a column of numbers', fields[column] ?? 'no such column');
    if (column === time.column) throw wrong(`${path}.column`, 'another column than that of the times', `${column}`);
    if (!units[quantity].some(({ ucum }) => ucum === unit) && findUnit(quantity, unit) === undefined) {
      throw wrong(`${path}.unit`, listUnits(quantity), `"${unit}"`);
    }
    const vector = quantity === 'acceleration' || quantity === 'angular-velocity';
    if (vector && axis === null) throw wrong(`${path}.axis`, 'x, y or z', 'null');
    const key = `${quantity} ${axis ?? ''} ${side ?? ''}`;
    if (seen.has(key)) throw wrong(path, 'one column for each quantity, axis and side', `two for ${key.trim()}`);
    seen.add(key);
  }
  if (people !== null && (fields[people] === undefined || fields[people] === 'passed-over')) {
    throw wrong('people', 'a column that is read', fields[people] ?? 'no such column');
  }
}
