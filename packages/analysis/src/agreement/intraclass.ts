import { requireRange } from '../check.ts';
import type { Bounds } from './bounds.ts';
import { fQuantile, fUpperTail } from './distributions.ts';
import type { MeanSquares } from './mean-squares.ts';

/** Name of a form by Shrout and Fleiss (1979); k stands for the number of raters. */
export type IntraclassForm = 'ICC(1,1)' | 'ICC(2,1)' | 'ICC(3,1)' | 'ICC(1,k)' | 'ICC(2,k)' | 'ICC(3,k)';

/** One intraclass correlation under both of its names. */
export interface Intraclass {
  readonly form: IntraclassForm;
  /** name by McGraw and Wong (1996) */
  readonly otherName: 'ICC(1)' | 'ICC(A,1)' | 'ICC(C,1)' | 'ICC(k)' | 'ICC(A,k)' | 'ICC(C,k)';
  /** undefined when there is nothing to correlate: all values are alike */
  readonly estimate: IntraclassEstimate | undefined;
  /** the F test that the true value is 0; undefined where the mean square below is 0 */
  readonly test: FTest | undefined;
}

export interface IntraclassEstimate {
  readonly value: number;
  /** undefined where the approximation behind it has no ground to stand on, as with estimates far below 0 */
  readonly interval: Bounds | undefined;
}

export interface FTest {
  readonly f: number;
  readonly dfAbove: number;
  readonly dfBelow: number;
  readonly p: number;
}

/** Reliability of the mean of k ratings from that of one (Spearman-Brown); undefined where that has no value. */
function ofMean(single: IntraclassEstimate | undefined, k: number): IntraclassEstimate | undefined {
  // at -1 / (k - 1) the mean of all ratings has no spread left to be a share of
  const reaches = (one: number): boolean => 1 + (k - 1) * one > 1e-12;
  if (single === undefined || !reaches(single.value)) return undefined;
  const at = (one: number): number => (k * one) / (1 + (k - 1) * one);
  const { value, interval } = single;
  const bounded = interval !== undefined && reaches(interval.low);
  return { value: at(value), interval: bounded ? { low: at(interval.low), high: at(interval.high) } : undefined };
}

function fTest(above: number, below: number, dfAbove: number, dfBelow: number): FTest | undefined {
  if (!(below > 0)) return undefined;
  const f = above / below;
  return { f, dfAbove, dfBelow, p: fUpperTail(f, dfAbove, dfBelow) };
}

/** Single rating of the one-way and of the consistency form: both turn on one ratio of mean squares. */
function fromRatio(
  above: number,
  below: number,
  [dfAbove, dfBelow]: readonly [number, number],
  k: number,
  tail: number,
): IntraclassEstimate | undefined {
  if (above + (k - 1) * below === 0) return undefined;
  const at = (ratio: number): number => (ratio === Infinity ? 1 : (ratio - 1) / (ratio + k - 1));
  const f = below === 0 ? Infinity : above / below;
  const low = at(f / fQuantile(1 - tail, dfAbove, dfBelow));
  const high = at(f * fQuantile(1 - tail, dfBelow, dfAbove));
  return { value: at(f), interval: { low, high } };
}

/** Single rating, absolute agreement of random raters, with the interval by Satterthwaite's degrees of freedom. */
function absolute(squares: MeanSquares, tail: number): IntraclassEstimate | undefined {
  const { subjectCount: n, raterCount: k, means } = squares;
  const { subjects: bms, raters: jms, residual: ems } = means;
  const below = n * bms + k * jms + (k * n - k - n) * ems;
  if (below === 0) return undefined;
  const value = (n * (bms - ems)) / below;
  // Shrout & Fleiss (1979), p. 424, both sides of nu times EMS squared so that EMS may be 0
  const ofRaters = k * value * jms;
  const ofResidual = (n * (1 + (k - 1) * value) - k * value) * ems;
  const weight = (n - 1) * ofRaters ** 2 + ofResidual ** 2;
  const nu = weight === 0 ? 0 : ((k - 1) * (n - 1) * (ofRaters + ofResidual) ** 2) / weight;
  // below 0 the two parts have opposite signs and nearly cancel: no spread is left that has degrees of freedom
  if (nu < 1) return { value, interval: weight === 0 && value === 1 ? { low: 1, high: 1 } : undefined };
  const rest = k * jms + (k * n - k - n) * ems;
  const fLow = fQuantile(1 - tail, n - 1, nu);
  const fHigh = fQuantile(1 - tail, nu, n - 1);
  const low = (n * (bms - fLow * ems)) / (fLow * rest + n * bms);
  const high = (n * (fHigh * bms - ems)) / (rest + n * fHigh * bms);
  return { value, interval: { low, high } };
}

/**
 * The six intraclass correlations of a table, each with its interval and the F test that it is 0.
 *
 * ICC(1,.): every subject rated by other raters; ICC(2,.): the same raters, drawn from many, and their levels count (absolute
 * agreement); ICC(3,.): these raters only, and their levels do not count (consistency). (.,1) is about one rating, (.,k) about the
 * mean of all. Estimates and bounds below 0 are given as they are.
 *
 * @param squares - mean squares of the table [unit of values squared]
 * @param level - share of samples whose interval holds the true value, such as 0.95 [-]
 * @returns six forms in the order of Shrout and Fleiss [-]
 * @throws {@link InputError} `out-of-range` when the level is not between 0 and 1
 *
 * Source: Shrout & Fleiss (1979), Psychol Bull 86:420-428; names of McGraw & Wong (1996), Psychol Methods 1:30-46
 * Checked against: fixtures/reference/agreement.intraclass.json
 */
export function intraclassForms(squares: MeanSquares, level: number): Intraclass[] {
  requireRange(level, level > 0 && level < 1, 'level', '0 < level < 1');
  const tail = (1 - level) / 2;
  const { means, df, raterCount: k } = squares;
  const oneWay = fromRatio(means.subjects, means.within, [df.subjects, df.within], k, tail);
  const agreement = absolute(squares, tail);
  const consistency = fromRatio(means.subjects, means.residual, [df.subjects, df.residual], k, tail);
  const oneWayTest = fTest(means.subjects, means.within, df.subjects, df.within);
  const twoWayTest = fTest(means.subjects, means.residual, df.subjects, df.residual);
  return [
    { form: 'ICC(1,1)', otherName: 'ICC(1)', estimate: oneWay, test: oneWayTest },
    { form: 'ICC(2,1)', otherName: 'ICC(A,1)', estimate: agreement, test: twoWayTest },
    { form: 'ICC(3,1)', otherName: 'ICC(C,1)', estimate: consistency, test: twoWayTest },
    { form: 'ICC(1,k)', otherName: 'ICC(k)', estimate: ofMean(oneWay, k), test: oneWayTest },
    { form: 'ICC(2,k)', otherName: 'ICC(A,k)', estimate: ofMean(agreement, k), test: twoWayTest },
    { form: 'ICC(3,k)', otherName: 'ICC(C,k)', estimate: ofMean(consistency, k), test: twoWayTest },
  ];
}
