import { MANIFEST_NUMBERS } from '@surae/shared';
import { quoted } from './errors.ts';
import type { ManifestEntry, ManifestPlacement, ManifestRefusal, ManifestRefusalCode } from './manifest-entry.ts';
import { parseNumber } from './number.ts';
import { sides } from './quantities.ts';
import { plainName } from './table-header.ts';

/** The header of a manifest and the words it may use. */
export interface ManifestLayout {
  readonly file: string | undefined;
  readonly names: readonly string[];
  /** the names in their plain spelling */
  readonly plain: readonly string[];
  readonly tests: readonly string[];
  readonly placements: readonly ManifestPlacement[];
}

const ownColumns = ['file', 'person', 'visit', 'side', 'test', 'placement', ...Object.keys(MANIFEST_NUMBERS)];

/** A refusal on its way out of the checks of one row. */
class RowRefusal extends Error {
  override readonly name = 'RowRefusal';
  readonly refusal: Pick<ManifestRefusal, 'code' | 'column' | 'expected' | 'actual'>;

  constructor(code: ManifestRefusalCode, column: string | undefined, expected: string, actual: string) {
    super(code);
    this.refusal = { code, expected, actual, ...(column === undefined ? {} : { column }) };
  }
}

/** One row of a manifest: usable, or refused with its reason. */
export function readManifestRow(fields: readonly string[], line: number, layout: ManifestLayout): ManifestEntry {
  const { names, plain } = layout;
  const cell = (column: string) => fields[plain.indexOf(column)]?.trim() ?? '';
  const file = cell('file');
  try {
    if (fields.length !== names.length) {
      throw new RowRefusal('ragged-row', undefined, `${names.length} fields as in the header`, `${fields.length}`);
    }
    if (file === '') throw new RowRefusal('no-file', 'file', 'the path of a recording', 'an empty field');
    const person = cell('person');
    const visit = cell('visit');
    const side = oneOf('unknown-side', 'side', cell('side'), sides);
    const test = oneOf('unknown-test', 'test', cell('test'), layout.tests);
    const placement = oneOf('unknown-placement', 'placement', cell('placement'), layout.placements);
    const heelLeverM = inRange('heel_lever_mm', cell('heel_lever_mm'));
    const bodyMassKg = inRange('body_mass_kg', cell('body_mass_kg'));
    const stringRestLengthM = inRange('string_rest_length_mm', cell('string_rest_length_mm'));
    return {
      kind: 'row',
      line,
      file,
      ...(person === '' ? {} : { person }),
      ...(visit === '' ? {} : { visit }),
      ...(side === undefined ? {} : { side }),
      ...(test === undefined ? {} : { test }),
      ...(placement === undefined ? {} : { placement }),
      ...(heelLeverM === undefined ? {} : { heelLeverM }),
      ...(bodyMassKg === undefined ? {} : { bodyMassKg }),
      ...(stringRestLengthM === undefined ? {} : { stringRestLengthM }),
      carried: Object.fromEntries(
        names
          .map((name, index) => [name, fields[index]!] as const)
          .filter(([name, value], index) => name !== '' && value !== '' && !ownColumns.includes(plain[index]!)),
      ),
    };
  } catch (error) {
    if (!(error instanceof RowRefusal)) throw error;
    const { column, expected, actual } = error.refusal;
    const place = [layout.file, `row ${line}`, column === undefined ? undefined : `column "${column}"`];
    const where = place.filter((part) => part !== undefined).join(', ');
    const message = `${where}: expected ${expected}, got ${actual}`;
    return { kind: 'refusal', line, file, ...error.refusal, message };
  }
}

function oneOf<Word extends string>(
  code: ManifestRefusalCode,
  column: string,
  text: string,
  words: readonly Word[],
): Word | undefined {
  if (text === '') return undefined;
  const found = words.find((word) => plainName(word) === plainName(text));
  if (found === undefined) throw new RowRefusal(code, column, `one of ${words.join(', ')}, or nothing`, quoted(text));
  return found;
}

function inRange(column: keyof typeof MANIFEST_NUMBERS, text: string): number | undefined {
  if (text === '') return undefined;
  const { least, greatest, unit, perSi } = MANIFEST_NUMBERS[column];
  const value = parseNumber(text);
  const expected = `a number of ${least} to ${greatest} ${unit}, or nothing`;
  if (typeof value !== 'number') throw new RowRefusal('not-a-number', column, expected, quoted(text));
  if (value < least || value > greatest) throw new RowRefusal('out-of-range', column, expected, quoted(text));
  return value / perSi;
}
