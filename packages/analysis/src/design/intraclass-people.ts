import { fQuantile, fUpperTail } from '../agreement/distributions.ts';
import { requireRange } from '../check.ts';
import { normalQuantile } from '../signal/normal.ts';

function requireShares(expected: number, repeats: number, level: number): void {
  requireRange(expected, expected >= 0 && expected < 1, 'expected', '0 <= ICC < 1');
  requireRange(repeats, Number.isInteger(repeats) && repeats >= 2, 'repeats', 'a whole number from 2 on');
  requireRange(level, level > 0 && level < 1, 'level', '0 < level < 1');
}

/**
 * People needed for an interval of an intraclass correlation of a wished width, by the formula: to hold the exact answer against.
 *
 * @param width - upper bound minus lower bound, above 0 and below 1 [-]
 * @param expected - intraclass correlation expected, at least 0 and below 1 [-]
 * @param repeats - tests of each person, >= 2 [-]
 * @param level - of the two-sided interval [-]
 * @returns number of people, not rounded [people]
 * @throws {@link InputError} `out-of-range` for an argument
 *
 * Source: Bonett (2002), Stat Med 21:1331-1335; for two tests and 0.7 or more he adds 5 times the correlation (from memory, not checked
 * against the paper)
 */
export function bonettPeople(width: number, expected: number, repeats: number, level: number): number {
  requireRange(width, width > 0 && width < 1, 'width', '0 < width < 1');
  requireShares(expected, repeats, level);
  const z = normalQuantile((1 + level) / 2);
  const spread = (1 - expected) ** 2 * (1 + (repeats - 1) * expected) ** 2;
  const people = (8 * z ** 2 * spread) / (repeats * (repeats - 1) * width ** 2) + 1;
  return repeats === 2 && expected >= 0.7 ? people + 5 * expected : people;
}

function ratioOf(expected: number, least: number, repeats: number): number {
  return (1 + (repeats * least) / (1 - least)) / (1 + (repeats * expected) / (1 - expected));
}

/**
 * Probability that an intraclass correlation, ICC(1,1), is found to lie above a least one: exactly, by F.
 *
 * @param expected - what it truly is, above least and below 1 [-]
 * @param least - what it has to exceed, at least 0 [-]
 * @param repeats - tests of each person, >= 2 [-]
 * @param level - of the one-sided bound that has to lie above least, such as 0.95 [-]
 * @param people - >= 2 [people]
 * @returns power, 0 to 1 [-]
 * @throws {@link InputError} `out-of-range` for an argument
 *
 * Source: F of one-way analysis of variance, of which Walter, Eliasziw & Donner (1998), Stat Med 17:101-110, is an approximation
 * Checked against: fixtures/reference/design.intraclass-power.json
 */
export function powerOfIntraclass(
  expected: number,
  least: number,
  repeats: number,
  level: number,
  people: number,
): number {
  requireShares(expected, repeats, level);
  requireRange(least, least >= 0 && least < expected, 'least', '0 <= least < expected');
  requireRange(people, Number.isInteger(people) && people >= 2, 'people', 'a whole number from 2 on');
  const [above, below] = [people - 1, people * (repeats - 1)];
  return fUpperTail(fQuantile(level, above, below) * ratioOf(expected, least, repeats), above, below);
}

/**
 * People needed to find an intraclass correlation above a least one, by the formula: to hold the exact answer against.
 *
 * @param expected - what it truly is [-]
 * @param least - what it has to exceed [-]
 * @param repeats - tests of each person, >= 2 [-]
 * @param level - of the one-sided bound [-]
 * @param power - probability of finding it [-]
 * @returns number of people, not rounded [people]
 * @throws {@link InputError} `out-of-range` for an argument
 *
 * Source: Walter, Eliasziw & Donner (1998), Stat Med 17:101-110 (from memory; the worked value 39 for 0.6, 0.8 and two tests as well)
 */
export function walterPeople(expected: number, least: number, repeats: number, level: number, power: number): number {
  requireShares(expected, repeats, level);
  requireRange(least, least >= 0 && least < expected, 'least', '0 <= least < expected');
  const z = normalQuantile(level) + normalQuantile(power);
  return 1 + (2 * z ** 2 * repeats) / (Math.log(ratioOf(expected, least, repeats)) ** 2 * (repeats - 1));
}
