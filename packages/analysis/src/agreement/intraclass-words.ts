import { requireRange } from '../check.ts';
import type { Bounds } from './bounds.ts';

export const INTRACLASS_WORDS = ['poor', 'moderate', 'good', 'excellent'] as const;

export type IntraclassWord = (typeof INTRACLASS_WORDS)[number];

/** The words that the interval of an intraclass correlation reaches, from its lower bound to its upper one. */
export interface IntraclassRange {
  readonly from: IntraclassWord;
  readonly to: IntraclassWord;
}

function wordOf(value: number): IntraclassWord {
  if (value < 0.5) return 'poor';
  if (value < 0.75) return 'moderate';
  return value > 0.9 ? 'excellent' : 'good';
}

/**
 * What an intraclass correlation is called, by both ends of its interval and never by the estimate: a narrow word for a wide
 * interval would claim what was not shown.
 *
 * @param interval - bounds of the coefficient at 95 % [-]
 * @returns the words of both bounds: poor under 0.5, moderate from it on, good from 0.75 on, excellent above 0.9 [-]
 * @throws {@link InputError} `out-of-range` for bounds that are no numbers or cross
 *
 * Source: Koo & Li (2016), J Chiropr Med 15:155-163
 */
export function intraclassWords({ low, high }: Bounds): IntraclassRange {
  requireRange(low, low <= high, 'interval', 'a lower bound no higher than the upper one');
  requireRange(high, true, 'interval', 'finite bounds');
  return { from: wordOf(low), to: wordOf(high) };
}
