import type { Bounded } from './bounds.ts';
import { boundedDeviation, type MeasurementError } from './measurement-error.ts';

/** From how many pairs of tests on an own standard error is used, and how. */
export interface UsableErrorSettings {
  /** pairs below which it is shown and not used [-] */
  readonly leastPairs: number;
  /** pairs below which its upper bound is used in place of the estimate [-] */
  readonly pairsForEstimate: number;
  /** level of the one-sided upper bound that is used between the two [-] */
  readonly cautiousLevel: number;
}

/** What a clinic may do with the standard error that it found itself. */
export type UsableError =
  | { readonly use: 'estimate' | 'upper-bound'; readonly sem: number; readonly pairCount: number }
  | { readonly use: 'no'; readonly pairCount: number; readonly pairsNeeded: number };

/**
 * The standard error to judge changes with, or that there are too few pairs for one.
 *
 * @param error - standard error with its degrees of freedom; each of them is worth a pair, and one pair is spent on the mean [unit of the error]
 * @param settings - numbers of pairs and the level of the cautious bound [-]
 * @returns what to use [unit of the error]
 * @throws {@link InputError} `out-of-range` when the settings hold no level between 0 and 1
 *
 * Source: common practice, no source; the bound by chi-square
 */
export function usableError(error: MeasurementError, settings: UsableErrorSettings): UsableError {
  const pairCount = error.df + 1;
  if (pairCount < settings.leastPairs) return { use: 'no', pairCount, pairsNeeded: settings.leastPairs };
  if (pairCount >= settings.pairsForEstimate) return { use: 'estimate', sem: error.sem.value, pairCount };
  // the upper bound of a two-sided interval at 2 p - 1 is the one-sided bound at p
  const cautious: Bounded = boundedDeviation(error.sem.value, error.df, 2 * settings.cautiousLevel - 1);
  return { use: 'upper-bound', sem: cautious.high, pairCount };
}
