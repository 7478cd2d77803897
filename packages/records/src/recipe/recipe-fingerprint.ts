import { sha256Hex } from '../hash.ts';
import type { Recipe } from './recipe.ts';

/** What a file must have to fit a recipe: names, units and kinds of its columns, and how its text is written. */
export type FittingPart = Pick<
  Recipe,
  'encoding' | 'delimiter' | 'decimalMark' | 'thousandsMark' | 'dates' | 'header' | 'groupRow' | 'unitRow' | 'fields'
>;

/** SHA-256 of what a file must have to fit. */
export function recipeFingerprint(part: FittingPart): string {
  const { encoding, delimiter, decimalMark, thousandsMark, header, unitRow, fields, dates, groupRow } = part;
  // what is absent is not told, so that recipes from before it keep their fingerprint
  const more = [...(dates === undefined ? [] : [{ dates }]), ...(groupRow === undefined ? [] : [{ groupRow }])];
  const told = JSON.stringify([encoding, delimiter, decimalMark, thousandsMark, header, unitRow, fields, ...more]);
  return sha256Hex(new TextEncoder().encode(told));
}
