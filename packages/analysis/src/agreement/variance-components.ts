import type { MeanSquares } from './mean-squares.ts';

/** Where the spread comes from. A component below zero is an estimate like any other and is not cut off. */
export interface VarianceComponents {
  readonly subjects: number;
  readonly raters: number;
  readonly residual: number;
  /** which of them came out below zero: chance, or a spread that the model does not know */
  readonly belowZero: readonly ('subjects' | 'raters')[];
}

/**
 * Variance of subjects, of raters and of the rest, from a two-way table with random raters.
 *
 * @param squares - mean squares of the table [unit of values squared]
 * @returns three components, which may be negative, and which of them are [unit of values squared]
 *
 * Source: McGraw & Wong (1996), Psychol Methods 1:30-46, expected mean squares of case 2 (from memory); Searle, Casella & McCulloch
 * (1992), Variance Components, 4.4: a negative estimate is shown and not set to zero (from memory)
 */
export function varianceComponents(squares: MeanSquares): VarianceComponents {
  const { means, subjectCount, raterCount } = squares;
  const subjects = (means.subjects - means.residual) / raterCount;
  const raters = (means.raters - means.residual) / subjectCount;
  const belowZero = [...(subjects < 0 ? (['subjects'] as const) : []), ...(raters < 0 ? (['raters'] as const) : [])];
  return { subjects, raters, residual: means.residual, belowZero };
}
