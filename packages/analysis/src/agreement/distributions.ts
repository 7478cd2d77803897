import chiSquareQuantileOf from '@stdlib/stats-base-dists-chisquare-quantile';
import fCdf from '@stdlib/stats-base-dists-f-cdf';
import fQuantileOf from '@stdlib/stats-base-dists-f-quantile';
import tCdf from '@stdlib/stats-base-dists-t-cdf';
import tQuantileOf from '@stdlib/stats-base-dists-t-quantile';
import { requireRange } from '../check.ts';

function requireProbability(probability: number): void {
  requireRange(probability, probability > 0 && probability < 1, 'probability', '0 < p < 1');
}

function requireFreedom(df: number, argument: string): void {
  requireRange(df, df > 0, argument, '> 0 degrees of freedom');
}

/**
 * Value of F below which a given share of the distribution lies.
 *
 * @param probability - above 0 and below 1 [-]
 * @param dfAbove - degrees of freedom of the numerator, > 0, whole or not [-]
 * @param dfBelow - degrees of freedom of the denominator, > 0, whole or not [-]
 * @returns the quantile [-]
 * @throws {@link InputError} `out-of-range` for the probability or the degrees of freedom
 *
 * Source: borrowed from @stdlib/stats-base-dists-f-quantile
 * Checked against: fixtures/reference/agreement.distributions.json
 */
export function fQuantile(probability: number, dfAbove: number, dfBelow: number): number {
  requireProbability(probability);
  requireFreedom(dfAbove, 'dfAbove');
  requireFreedom(dfBelow, 'dfBelow');
  return fQuantileOf(probability, dfAbove, dfBelow);
}

/**
 * Probability that F is larger than a value by chance alone.
 *
 * @param value - ratio of two mean squares, >= 0 [-]
 * @param dfAbove - degrees of freedom of the numerator, > 0 [-]
 * @param dfBelow - degrees of freedom of the denominator, > 0 [-]
 * @returns probability, 0 to 1 [-]
 * @throws {@link InputError} `out-of-range` for the value or the degrees of freedom
 *
 * Source: borrowed from @stdlib/stats-base-dists-f-cdf
 * Checked against: fixtures/reference/agreement.distributions.json
 */
export function fUpperTail(value: number, dfAbove: number, dfBelow: number): number {
  requireRange(value, value >= 0, 'value', '>= 0');
  requireFreedom(dfAbove, 'dfAbove');
  requireFreedom(dfBelow, 'dfBelow');
  if (value === 0) return 1;
  // 1 / F has the distribution with the degrees of freedom changed over: no digits are lost in 1 - p
  return fCdf(1 / value, dfBelow, dfAbove);
}

/**
 * Value of Student's t below which a given share of the distribution lies.
 *
 * @param probability - above 0 and below 1 [-]
 * @param df - degrees of freedom, > 0 [-]
 * @returns the quantile [-]
 * @throws {@link InputError} `out-of-range` for the probability or the degrees of freedom
 *
 * Source: borrowed from @stdlib/stats-base-dists-t-quantile
 * Checked against: fixtures/reference/agreement.distributions.json
 */
export function tQuantile(probability: number, df: number): number {
  requireProbability(probability);
  requireFreedom(df, 'df');
  return tQuantileOf(probability, df);
}

/**
 * Probability of a t at least as far from 0, on either side.
 *
 * @param value - any finite value [-]
 * @param df - degrees of freedom, > 0 [-]
 * @returns probability, 0 to 1 [-]
 * @throws {@link InputError} `out-of-range` for the value or the degrees of freedom
 *
 * Source: borrowed from @stdlib/stats-base-dists-t-cdf
 * Checked against: fixtures/reference/agreement.distributions.json
 */
export function tTwoSided(value: number, df: number): number {
  requireRange(value, true, 'value', 'a finite number');
  requireFreedom(df, 'df');
  return 2 * tCdf(-Math.abs(value), df);
}

/**
 * Value of chi-square below which a given share of the distribution lies.
 *
 * @param probability - above 0 and below 1 [-]
 * @param df - degrees of freedom, > 0 [-]
 * @returns the quantile [-]
 * @throws {@link InputError} `out-of-range` for the probability or the degrees of freedom
 *
 * Source: borrowed from @stdlib/stats-base-dists-chisquare-quantile
 * Checked against: fixtures/reference/agreement.distributions.json
 */
export function chiSquareQuantile(probability: number, df: number): number {
  requireProbability(probability);
  requireFreedom(df, 'df');
  return chiSquareQuantileOf(probability, df);
}
