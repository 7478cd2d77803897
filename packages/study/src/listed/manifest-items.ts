import { type ManifestEntry, type ManifestRow, RecordError, readManifest } from '@surae/records';
import { ALL_PLACEMENTS, TESTS } from './known-words.ts';
import { ListFault } from './list-fault.ts';
import { reservedNames } from './reserved-names.ts';
import { RECIPE_COLUMNS, rowRecipe } from './row-recipe.ts';
import { readSize, type SizeName } from './size-ranges.ts';
import { readTold } from './told.ts';
import type { GivenAbout, WorkItem } from './work-list.ts';

/** Where a file is read from that a manifest names. */
export type PlaceOf = (file: string) => string;

/** Columns beside those that every manifest knows which are used as well. */
const ALSO_USED = [
  'protocol',
  'external_mass_kg',
  'load_percent',
  'ankle_lever_mm',
  'ankle_angle_deg',
  'forefoot_lever_mm',
  'calibration_u_percent',
  'calibration_zero_u',
  'polarity',
  ...RECIPE_COLUMNS,
] as const;

/**
 * The recordings that a manifest names, in its order. A cell that is empty is unknown: what was said beside it fills it.
 * A row that cannot be followed is in the list with its refusal; the others are not touched by it.
 *
 * @throws {@link ListFault} when the manifest as a whole cannot be read
 */
export function manifestItems(path: string, bytes: Uint8Array, given: GivenAbout, placeOf: PlaceOf): WorkItem[] {
  const entries = entriesOf(path, bytes);
  refuseTaken(
    path,
    entries.flatMap((entry) => (entry.kind === 'row' ? Object.keys(entry.carried) : [])),
  );
  return entries.map((entry) => entryItem(path, entry, given, placeOf));
}

/** @throws {@link ListFault} when a column has a name that results have */
export function refuseTaken(path: string, names: readonly string[]): void {
  const reserved = reservedNames();
  const taken = names.find((name) => reserved.has(name) && !isAlsoUsed(name));
  if (taken !== undefined) {
    throw new ListFault(`${path}: the column "${taken}" has the name of a result; give it another`);
  }
}

/** What one row asks for, or its refusal. */
export function entryItem(path: string, entry: ManifestEntry, given: GivenAbout, placeOf: PlaceOf): WorkItem {
  if (entry.kind === 'row') return rowItem(path, entry, given, placeOf);
  const { file, message } = entry;
  return { file, path: placeOf(file), about: given, carried: {}, refusal: message };
}

/** What a manifest may say. */
export const MANIFEST_WORDS = { tests: TESTS, placements: ALL_PLACEMENTS };

function entriesOf(path: string, bytes: Uint8Array): ManifestEntry[] {
  try {
    return readManifest(bytes, { file: path, ...MANIFEST_WORDS });
  } catch (error) {
    if (error instanceof RecordError) throw new ListFault(error.message);
    throw error;
  }
}

function isAlsoUsed(name: string): boolean {
  return ALSO_USED.some((used) => used === name);
}

function rowItem(path: string, row: ManifestRow, given: GivenAbout, placeOf: PlaceOf): WorkItem {
  let refusal: string | undefined;
  const size = (column: (typeof ALSO_USED)[number], name: SizeName): number | undefined => {
    const text = row.carried[column];
    if (text === undefined) return undefined;
    const value = readSize(name, text);
    if (typeof value === 'number') return value;
    refusal ??= `${path}, row ${row.line}, column "${column}": expected ${value.expected}, got "${text}"`;
    return undefined;
  };
  const polarity = (): 'positive' | 'negative' | undefined => {
    const text = row.carried['polarity'];
    if (text === undefined || text === 'positive' || text === 'negative') return text;
    refusal ??= `${path}, row ${row.line}, column "polarity": expected one of positive, negative, or nothing, got "${text}"`;
    return undefined;
  };
  const millimetres = (metres: number | undefined): number | undefined =>
    metres === undefined ? undefined : metres * 1000;
  const told = readTold(row.carried);
  const about: GivenAbout = {
    test: row.test ?? given.test,
    placement: row.placement ?? given.placement,
    side: row.side ?? given.side,
    protocol: row.carried['protocol'] ?? given.protocol,
    heelLeverMm: millimetres(row.heelLeverM) ?? given.heelLeverMm,
    bodyMassKg: row.bodyMassKg ?? given.bodyMassKg,
    stringRestMm: millimetres(row.stringRestLengthM) ?? given.stringRestMm,
    externalMassKg: size('external_mass_kg', 'external-mass-kg') ?? given.externalMassKg,
    loadPercent: size('load_percent', 'load-percent') ?? given.loadPercent,
    ankleLeverMm: size('ankle_lever_mm', 'ankle-lever-mm') ?? given.ankleLeverMm,
    ankleAngleDeg: size('ankle_angle_deg', 'ankle-angle-deg') ?? given.ankleAngleDeg,
    forefootLeverMm: size('forefoot_lever_mm', 'forefoot-lever-mm') ?? given.forefootLeverMm,
    calibrationUPercent: size('calibration_u_percent', 'calibration-u-percent') ?? given.calibrationUPercent,
    calibrationZeroU: size('calibration_zero_u', 'calibration-zero-u') ?? given.calibrationZeroU,
    polarity: polarity() ?? given.polarity,
    warmUpPushes: ('expected' in told ? null : told.warm_up_pushes) ?? given.warmUpPushes,
  };
  if ('expected' in told) {
    refusal ??= `${path}, row ${row.line}, column "${told.column}": expected ${told.expected}, got "${told.actual}"`;
  }
  const recipe = rowRecipe(row.carried, placeOf);
  if (recipe !== undefined && 'expected' in recipe) {
    refusal ??= `${path}, row ${row.line}, column "${recipe.column}": expected ${recipe.expected}, got "${recipe.actual}"`;
  }
  const { person, visit } = row;
  const handedOn = Object.entries(row.carried).filter(([name]) => !isAlsoUsed(name));
  return {
    file: row.file,
    path: placeOf(row.file),
    about,
    carried: {
      ...(person === undefined ? {} : { person }),
      ...(visit === undefined ? {} : { visit }),
      ...Object.fromEntries(handedOn),
    },
    ...(recipe === undefined || 'expected' in recipe ? {} : { recipe }),
    refusal,
  };
}
