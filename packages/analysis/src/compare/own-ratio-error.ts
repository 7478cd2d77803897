import { meanSquares } from '../agreement/mean-squares.ts';
import { boundedDeviation, measurementError } from '../agreement/measurement-error.ts';
import { requireRange } from '../check.ts';
import type { OwnRatioError } from './ratio-error.ts';

/**
 * Standard error of one ratio of the legs from ratios that were repeated on other days. It holds what both legs share of a day,
 * such as a bad night, and which errors of single legs put together would count twice.
 *
 * @param ratios - one row a person, one column a visit, at least 2 by 2, each > 0 and with the same leg above [-]
 * @param cautiousLevel - level of the one-sided upper bound, between 0.5 and 1 [-]
 * @param source - name of the study and whom it was measured on [-]
 * @returns the error; null when no ratio differs by more than a common factor, which is no proof that there is no error [-]
 * @throws {@link InputError} `out-of-range` for a ratio that is not above 0, the level, or the size of the table; `length-mismatch`
 *
 * Source: error as the root of the residual mean square: Weir (2005), J Strength Cond Res 19:231; on the log scale, as for every
 * ratio: Bland & Altman (1986), Lancet i:307-310
 */
export function ownRatioError(
  ratios: readonly (readonly number[])[],
  cautiousLevel: number,
  source: OwnRatioError['source'],
): OwnRatioError | null {
  requireRange(cautiousLevel, cautiousLevel > 0.5 && cautiousLevel < 1, 'cautiousLevel', '0.5 < level < 1');
  for (const ratio of ratios.flat()) requireRange(ratio, ratio > 0, 'ratios', '> 0');
  const squares = meanSquares(ratios.map((row) => row.map((ratio) => Math.log(ratio))));
  // the upper bound of a two-sided interval at 2 p - 1 is the one-sided bound at p
  const error = measurementError(squares, 2 * cautiousLevel - 1);
  if (error === undefined) return null;
  const { sem, df } = error;
  return {
    logError: sem.value,
    logErrorUpper: boundedDeviation(sem.value, df, 2 * cautiousLevel - 1).high,
    pairs: df + 1,
    source,
  };
}
