import { tQuantile } from '../agreement/distributions.ts';
import { requireRange } from '../check.ts';
import { noncentralTCdf } from './noncentral-t.ts';

/** What a study asks of a mean difference: whether there is one, on either side, or whether it is not worse than a margin. */
export type MeanAim = 'differs' | 'not-worse';

/** A comparison of means before it is done. */
export interface MeanDesign {
  readonly aim: MeanAim;
  /** true difference that is looked for; `not-worse`: how far the true difference lies above the margin [unit of sd] */
  readonly difference: number;
  /** standard deviation of the value of one person, or of the differences of pairs, > 0 [unit of sd] */
  readonly sd: number;
  /** of the two-sided interval that concludes, such as 0.95; `not-worse` rests on its lower bound alone [-] */
  readonly level: number;
}

function requireDesign({ difference, sd, level }: MeanDesign, people: number): void {
  requireRange(difference, true, 'difference', 'a finite number');
  requireRange(sd, sd > 0, 'sd', '> 0');
  requireRange(level, level > 0 && level < 1, 'level', '0 < level < 1');
  requireRange(people, Number.isInteger(people) && people >= 2, 'people', 'a whole number from 2 on');
}

function power(aim: MeanAim, shift: number, df: number, level: number): number {
  const bound = tQuantile((1 + level) / 2, df);
  const above = 1 - noncentralTCdf(bound, df, shift);
  return aim === 'differs' ? above + noncentralTCdf(-bound, df, shift) : above;
}

/**
 * Probability that the interval of the difference of two groups of equal size holds no difference of none, or lies above the margin.
 *
 * @param design - what is looked for [unit of sd]
 * @param people - in each group, >= 2 [people]
 * @returns power, 0 to 1 [-]
 * @throws {@link InputError} `out-of-range` for an argument
 *
 * Source: noncentral t with 2 n - 2 degrees of freedom; both tails count where either side is looked for
 * Checked against: fixtures/reference/design.groups.json
 */
export function powerOfGroups(design: MeanDesign, people: number): number {
  requireDesign(design, people);
  const { aim, difference, sd, level } = design;
  return power(aim, difference / (sd * Math.sqrt(2 / people)), 2 * people - 2, level);
}

/**
 * Probability that the interval of a mean difference of pairs holds no difference of none, or lies above the margin.
 *
 * @param design - what is looked for; sd is that of the differences [unit of sd]
 * @param people - pairs, >= 2 [people]
 * @returns power, 0 to 1 [-]
 * @throws {@link InputError} `out-of-range` for an argument
 *
 * Source: noncentral t with n - 1 degrees of freedom
 * Checked against: fixtures/reference/design.pairs.json
 */
export function powerOfPairs(design: MeanDesign, people: number): number {
  requireDesign(design, people);
  const { aim, difference, sd, level } = design;
  return power(aim, (difference / sd) * Math.sqrt(people), people - 1, level);
}

/**
 * Standard deviation of the value of a person that is the mean of several legs.
 *
 * @param sd - of one leg, > 0 [unit of sd]
 * @param legs - of each person, 1 or 2 [-]
 * @param alike - intraclass correlation of legs of one person, 0 to 1 [-]
 * @returns sd root ((1 + (legs - 1) alike) / legs): the design effect 1 + (m - 1) ICC over m [unit of sd]
 * @throws {@link InputError} `out-of-range` for an argument
 *
 * Source: Kish (1965), Survey Sampling (from memory, not checked against the book)
 */
export function deviationOfLegs(sd: number, legs: number, alike: number): number {
  requireRange(sd, sd > 0, 'sd', '> 0');
  requireRange(legs, legs === 1 || legs === 2, 'legs', '1 or 2');
  requireRange(alike, alike >= 0 && alike <= 1, 'alike', '0 <= ICC <= 1');
  return sd * Math.sqrt((1 + (legs - 1) * alike) / legs);
}
