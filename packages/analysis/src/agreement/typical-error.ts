import { requireRange } from '../check.ts';
import type { Bounded } from './bounds.ts';
import { meanSquares } from './mean-squares.ts';
import { measurementError } from './measurement-error.ts';

/** Within-subject variation as a share of the mean. */
export interface Variation {
  /** typical error over the grand mean [%]; undefined when the mean is not above 0 or nothing varied */
  readonly rawPercent: Bounded | undefined;
  /** the same from the logarithms, for errors that grow with the value [%]; undefined when a value is not above 0 */
  readonly logPercent: Bounded | undefined;
}

function scaled(by: (value: number) => number, bounded: Bounded | undefined): Bounded | undefined {
  return bounded && { value: by(bounded.value), low: by(bounded.low), high: by(bounded.high) };
}

/**
 * Coefficient of variation within subjects, raw and by logarithms, with intervals by chi-square. The typical error itself is the
 * standard error of measurement under another name.
 *
 * @param values - one row a subject, one column a rater, at least 2 by 2, finite, on a scale with a true zero [unit of values]
 * @param level - share of samples whose interval holds the true value [-]
 * @returns two coefficients of variation [%]
 * @throws {@link InputError} `out-of-range` for the level or the size of the table; `length-mismatch`; `not-finite`
 *
 * Source: Hopkins (2000), Sports Med 30:1-15
 */
export function variation(values: readonly (readonly number[])[], level: number): Variation {
  requireRange(level, level > 0 && level < 1, 'level', '0 < level < 1');
  const raw = meanSquares(values);
  const rawPercent =
    raw.grandMean > 0 ? scaled((sem) => (100 * sem) / raw.grandMean, measurementError(raw, level)?.sem) : undefined;
  if (!values.every((row) => row.every((value) => value > 0))) return { rawPercent, logPercent: undefined };
  const logs = meanSquares(values.map((row) => row.map(Math.log)));
  return { rawPercent, logPercent: scaled((sem) => 100 * Math.expm1(sem), measurementError(logs, level)?.sem) };
}
