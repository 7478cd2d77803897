import { requireRange } from '../check.ts';
import { leastCount } from '../design/least-count.ts';
import { normalQuantile } from '../signal/normal.ts';
import { chiSquareQuantile, fQuantile, tQuantile } from './distributions.ts';

function requireCommon(level: number, repeats: number): void {
  requireRange(level, level > 0 && level < 1, 'level', '0 < level < 1');
  requireRange(repeats, Number.isInteger(repeats) && repeats >= 2, 'repeats', 'a whole number from 2 on');
}

function requirePeople(people: number): void {
  requireRange(people, Number.isInteger(people) && people >= 2, 'people', 'a whole number from 2 on');
}

/**
 * How far the upper bound of the standard error of measurement lies above its estimate.
 *
 * @param people - >= 2 [people]
 * @param repeats - tests of each person, >= 2 [-]
 * @param level - of the two-sided interval, such as 0.95 [-]
 * @returns share of the estimate, such as 0.3 for 30 % [-]
 * @throws {@link InputError} `out-of-range` for an argument
 *
 * Source: interval of a standard deviation by chi-square with (n - 1)(k - 1) degrees of freedom
 */
export function errorAbove(people: number, repeats: number, level: number): number {
  requirePeople(people);
  requireCommon(level, repeats);
  const df = (people - 1) * (repeats - 1);
  return Math.sqrt(df / chiSquareQuantile((1 - level) / 2, df)) - 1;
}

/**
 * People needed so that the upper bound of the standard error of measurement lies no more than a given share above its estimate.
 *
 * @param share - such as 0.3 for 30 %, > 0 [-]
 * @param repeats - tests of each person, >= 2 [-]
 * @param level - of the two-sided interval, such as 0.95 [-]
 * @returns number of people, undefined beyond 100,000 [people]
 * @throws {@link InputError} `out-of-range` for an argument
 *
 * Source: interval of a standard deviation by chi-square with (n - 1)(k - 1) degrees of freedom
 */
export function peopleForError(share: number, repeats: number, level: number): number | undefined {
  requireRange(share, share > 0, 'share', '> 0');
  requireCommon(level, repeats);
  return leastCount(2, (people) => errorAbove(people, repeats, level) <= share);
}

/**
 * Width of the interval of an intraclass correlation of single ratings, ICC(1,1), when its estimate comes out as expected.
 *
 * @param expected - intraclass correlation, at least 0 and below 1 [-]
 * @param people - number of subjects, >= 2 [-]
 * @param repeats - tests of each, >= 2 [-]
 * @param level - of the two-sided interval [-]
 * @returns upper bound minus lower bound [-]
 * @throws {@link InputError} `out-of-range` for an argument
 *
 * Source: interval of Shrout & Fleiss (1979), Psychol Bull 86:420-428, one-way; idea of Bonett (2002), Stat Med 21:1331-1335
 */
export function intraclassWidth(expected: number, people: number, repeats: number, level: number): number {
  requireRange(expected, expected >= 0 && expected < 1, 'expected', '0 <= ICC < 1');
  requirePeople(people);
  requireCommon(level, repeats);
  const ratio = (1 + (repeats - 1) * expected) / (1 - expected);
  const share = (1 + level) / 2;
  const [above, below] = [people - 1, people * (repeats - 1)];
  const at = (f: number): number => (f - 1) / (f + repeats - 1);
  return at(ratio * fQuantile(share, below, above)) - at(ratio / fQuantile(share, above, below));
}

/**
 * People needed so that the interval of an intraclass correlation is no wider than wished.
 *
 * @param width - upper bound minus lower bound, above 0 and below 1 [-]
 * @param expected - intraclass correlation expected, at least 0 and below 1 [-]
 * @param repeats - tests of each person, >= 2 [-]
 * @param level - of the two-sided interval [-]
 * @returns number of people, undefined beyond 100,000 [people]
 * @throws {@link InputError} `out-of-range` for an argument
 *
 * Source: {@link intraclassWidth}; close to the formula of Bonett (2002), Stat Med 21:1331-1335
 */
export function peopleForIntraclass(
  width: number,
  expected: number,
  repeats: number,
  level: number,
): number | undefined {
  requireRange(width, width > 0 && width < 1, 'width', '0 < width < 1');
  requireCommon(level, repeats);
  return leastCount(3, (people) => intraclassWidth(expected, people, repeats, level) <= width);
}

/**
 * Half width of the interval of a limit of agreement of 95 %, in standard deviations of the differences.
 *
 * @param people - pairs, >= 2 [people]
 * @param level - of the two-sided interval [-]
 * @returns half width over standard deviation [-]
 * @throws {@link InputError} `out-of-range` for an argument
 *
 * Source: Bland & Altman (1986), Lancet i:307-310, variance of a limit as in limits-of-agreement.ts
 */
export function limitHalfWidth(people: number, level: number): number {
  requirePeople(people);
  requireCommon(level, 2);
  const reach = normalQuantile(0.975);
  return tQuantile((1 + level) / 2, people - 1) * Math.sqrt((1 + reach ** 2 / 2) / people);
}

/**
 * People needed so that a limit of agreement of 95 % is known to a given share of the standard deviation of the differences.
 *
 * @param share - half width of the limit's interval in standard deviations, such as 0.34, > 0 [-]
 * @param level - of the two-sided interval [-]
 * @returns number of people, undefined beyond 100,000 [people]
 * @throws {@link InputError} `out-of-range` for an argument
 *
 * Source: Bland & Altman (1986), Lancet i:307-310, variance of a limit as in limits-of-agreement.ts
 */
export function peopleForLimits(share: number, level: number): number | undefined {
  requireRange(share, share > 0, 'share', '> 0');
  requireCommon(level, 2);
  return leastCount(2, (people) => limitHalfWidth(people, level) <= share);
}
