import { tQuantile, tTwoSided } from '@surae/analysis';

/** A difference of means with its interval. */
export interface MeanDifference {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly standardError: number;
  readonly df: number;
  readonly t: number;
  /** probability of a t as far from 0 on either side, were there no difference */
  readonly p: number;
}

/** Number, mean and standard deviation of a list; the deviation needs two values. */
export interface Moments {
  readonly n: number;
  readonly mean: number;
  readonly sd: number;
}

/** Mean and standard deviation with n - 1, in two passes. */
export function momentsOf(values: readonly number[]): Moments {
  const n = values.length;
  const mean = values.reduce((sum, value) => sum + value, 0) / n;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { n, mean, sd: Math.sqrt(squares / (n - 1)) };
}

function bounded(value: number, standardError: number, df: number, level: number): MeanDifference | undefined {
  // all values alike: a width of nothing is no interval
  if (!(standardError > 0)) return undefined;
  const half = tQuantile((1 + level) / 2, df) * standardError;
  const t = value / standardError;
  return { value, low: value - half, high: value + half, standardError, df, t, p: tTwoSided(t, df) };
}

/**
 * Mean of the first less that of the second, of independent people, without the assumption that both spread alike.
 *
 * @param first - one value a person, n >= 2
 * @param second - likewise
 * @param level - of the interval, such as 0.95
 * @returns the difference, or undefined where neither spreads at all
 *
 * Source: Welch (1947), Biometrika 34:28-35; degrees of freedom of Satterthwaite (1946), Biometrics Bull 2:110-114
 * Checked against: fixtures/reference/study.independent.json
 */
export function welchDifference(
  first: readonly number[],
  second: readonly number[],
  level: number,
): MeanDifference | undefined {
  const [a, b] = [momentsOf(first), momentsOf(second)];
  const [ofA, ofB] = [a.sd ** 2 / a.n, b.sd ** 2 / b.n];
  const df = (ofA + ofB) ** 2 / (ofA ** 2 / (a.n - 1) + ofB ** 2 / (b.n - 1));
  return bounded(a.mean - b.mean, Math.sqrt(ofA + ofB), df, level);
}

/**
 * Mean of the differences of the same people.
 *
 * @param first - one value a person, n >= 2
 * @param second - of the same people in the same order
 * @param level - of the interval, such as 0.95
 * @returns the difference, or undefined where all differ alike
 *
 * Source: Student (1908), Biometrika 6:1-25
 * Checked against: fixtures/reference/study.paired.json
 */
export function pairedDifference(
  first: readonly number[],
  second: readonly number[],
  level: number,
): MeanDifference | undefined {
  const { n, mean, sd } = momentsOf(first.map((value, at) => value - second[at]!));
  return bounded(mean, sd / Math.sqrt(n), n - 1, level);
}
