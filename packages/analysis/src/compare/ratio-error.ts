import { COMPARISON_RULES } from '@surae/shared';
import { requireRange } from '../check.ts';
import type { ReliabilitySource } from './reliability.ts';

/** How much the ratio of the legs differs from one visit to the next, as a clinic measured it on its own people. */
export interface OwnRatioError {
  /** standard error of the natural logarithm of one ratio, > 0 [-] */
  readonly logError: number;
  /** upper bound of its one-sided interval at the cautious level [-] */
  readonly logErrorUpper: number;
  /** pairs of visits; each degree of freedom is worth one, and one is spent on the mean */
  readonly pairs: number;
  readonly source: Omit<ReliabilitySource, 'kind' | 'people'>;
}

/** Which error a ratio rests on, and what became of the clinic's own. */
export interface RatioError {
  /** own-ratios: repeated ratios; sides-independent: the errors of both sides, as if they had nothing in common */
  readonly from: 'own-ratios' | 'sides-independent';
  readonly own: 'used' | 'used-with-margin' | 'too-few-pairs' | 'none';
  /** pairs of visits behind the clinic's own; null where there is none */
  readonly pairs: number | null;
  /** of the clinic's own; null where the sides are taken as independent, for then it stands with the values */
  readonly source: ReliabilitySource | null;
  /** standard error of the natural logarithm of the ratio [-] */
  readonly logU: number;
}

/**
 * The error that a ratio of the legs rests on: the clinic's own repeated ratios from 15 pairs on (with their upper bound below
 * 30), else the errors of both sides, taken as independent. Which of them it was is in the result.
 *
 * @param independentLogU - standard error of the logarithm by the errors of both sides, >= 0 [-]
 * @param own - the clinic's own repeated ratios; null where there are none [-]
 * @returns see {@link RatioError} [-]
 * @throws {@link InputError} `out-of-range` for an error below 0, or an own error that is not above 0
 *
 * Source: common practice, no source
 */
export function ratioErrorOf(independentLogU: number, own: OwnRatioError | null): RatioError {
  requireRange(independentLogU, independentLogU >= 0, 'independentLogU', '>= 0');
  const independent = { from: 'sides-independent', source: null, logU: independentLogU } as const;
  if (own === null) return { ...independent, own: 'none', pairs: null };
  const { logError, logErrorUpper, pairs } = own;
  requireRange(logError, logError > 0, 'own.logError', '> 0');
  requireRange(logErrorUpper, logErrorUpper >= logError, 'own.logErrorUpper', 'no less than own.logError');
  // a number of pairs that is none is below every limit
  if (!(pairs >= COMPARISON_RULES.ownPairsLeast.value)) return { ...independent, own: 'too-few-pairs', pairs };
  const isPlain = pairs >= COMPARISON_RULES.ownPairsPlain.value;
  return {
    from: 'own-ratios',
    own: isPlain ? 'used' : 'used-with-margin',
    pairs,
    source: { ...own.source, kind: 'own-clinic', people: pairs },
    logU: isPlain ? logError : logErrorUpper,
  };
}
