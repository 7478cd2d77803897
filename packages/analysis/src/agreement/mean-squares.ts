import { requireFinite, requireRange, requireSameLength } from '../check.ts';

/** Analysis of variance of a table of subjects by raters, one value a cell. */
export interface MeanSquares {
  readonly subjectCount: number;
  readonly raterCount: number;
  readonly grandMean: number;
  readonly raterMeans: readonly number[];
  /** sums of squares */
  readonly sums: Shares;
  /** the same over their degrees of freedom: BMS, JMS, EMS and WMS of Shrout and Fleiss */
  readonly means: Shares;
  readonly df: Shares;
}

export interface Shares {
  readonly subjects: number;
  readonly raters: number;
  /** what neither subjects nor raters explain */
  readonly residual: number;
  /** what subjects do not explain: raters and residual together */
  readonly within: number;
}

/**
 * Mean squares of a table without holes: between subjects, between raters, residual, and within subjects.
 *
 * @param values - one row a subject, one column a rater, at least 2 by 2, finite [unit of values]
 * @returns sums, degrees of freedom and mean squares [unit of values squared]
 * @throws {@link InputError} `out-of-range` for fewer than 2 rows or columns; `length-mismatch`; `not-finite`
 *
 * Source: Shrout & Fleiss (1979), Psychol Bull 86:420-428, Tables 1 to 3
 * Checked against: fixtures/reference/agreement.intraclass.json
 */
export function meanSquares(values: readonly (readonly number[])[]): MeanSquares {
  const n = values.length;
  requireRange(n, n >= 2, 'subjects', 'at least 2');
  const k = values[0].length;
  requireRange(k, k >= 2, 'raters', 'at least 2');
  for (const row of values) {
    requireSameLength(values[0], row, 'values');
    requireFinite(row, 'values');
  }
  const meanOf = (list: readonly number[]): number => list.reduce((sum, value) => sum + value, 0) / list.length;
  const subjectMeans = values.map(meanOf);
  const raterMeans = values[0].map((_, rater) => meanOf(values.map((row) => row[rater])));
  const grandMean = meanOf(subjectMeans);
  // deviations, not differences of squares: a large mean costs no digits
  const squared = (list: readonly number[]): number => list.reduce((sum, value) => sum + (value - grandMean) ** 2, 0);
  let residual = 0;
  let within = 0;
  values.forEach((row, subject) =>
    row.forEach((value, rater) => {
      residual += (value - subjectMeans[subject] - raterMeans[rater] + grandMean) ** 2;
      within += (value - subjectMeans[subject]) ** 2;
    }),
  );
  // what binary arithmetic leaves of a spread that is none
  const noise = n * k * (8 * Number.EPSILON * Math.max(...values.flat().map(Math.abs))) ** 2;
  const real = (sum: number): number => (sum > noise ? sum : 0);
  const sums = {
    subjects: real(k * squared(subjectMeans)),
    raters: real(n * squared(raterMeans)),
    residual: real(residual),
    within: real(within),
  };
  const df = { subjects: n - 1, raters: k - 1, residual: (n - 1) * (k - 1), within: n * (k - 1) };
  const means = {
    subjects: sums.subjects / df.subjects,
    raters: sums.raters / df.raters,
    residual: sums.residual / df.residual,
    within: sums.within / df.within,
  };
  return { subjectCount: n, raterCount: k, grandMean, raterMeans, sums, means, df };
}
