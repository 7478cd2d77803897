import { requireRange } from '../check.ts';
import type { Bounded } from './bounds.ts';
import { chiSquareQuantile } from './distributions.ts';
import type { MeanSquares } from './mean-squares.ts';

/** Standard error of measurement and what it was found from. */
export interface MeasurementError {
  readonly sem: Bounded;
  /** degrees of freedom of the residual */
  readonly df: number;
}

/**
 * A standard deviation with its interval by chi-square.
 *
 * @param sd - standard deviation that was found, > 0 [unit of sd]
 * @param df - degrees of freedom it was found with, > 0 [-]
 * @param level - share of samples whose interval holds the true value [-]
 * @returns the standard deviation and its interval [unit of sd]
 * @throws {@link InputError} `out-of-range` when the standard deviation, the degrees of freedom or the level cannot be
 *
 * Source: definition of chi-square; factors for n = 10, 20, 30, 50 as in the tests
 */
export function boundedDeviation(sd: number, df: number, level: number): Bounded {
  requireRange(sd, sd > 0, 'sd', '> 0');
  requireRange(level, level > 0 && level < 1, 'level', '0 < level < 1');
  const tail = (1 - level) / 2;
  const at = (share: number): number => sd * Math.sqrt(df / chiSquareQuantile(share, df));
  return { value: sd, low: at(1 - tail), high: at(tail) };
}

/**
 * Standard error of measurement: root of the residual mean square, so that a difference between days that all people share is no
 * part of it, with its interval by chi-square.
 *
 * @param squares - mean squares of the table [unit of values squared]
 * @param level - share of samples whose interval holds the true value, such as 0.95 [-]
 * @returns the standard error, or undefined when no residual was seen: that is no proof that there is none [unit of values]
 * @throws {@link InputError} `out-of-range` when the level is not between 0 and 1
 *
 * Source: Weir (2005), J Strength Cond Res 19:231-240
 */
export function measurementError(squares: MeanSquares, level: number): MeasurementError | undefined {
  const { means, df } = squares;
  if (means.residual === 0) return undefined;
  return { sem: boundedDeviation(Math.sqrt(means.residual), df.residual, level), df: df.residual };
}
