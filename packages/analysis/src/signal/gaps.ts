import { requireRange } from '../check.ts';
import { type Interval, overlapS } from './intervals.ts';

/**
 * Stretches without samples.
 *
 * @param timesS - sample times, strictly rising [s]
 * @param longerThanS - intervals up to this length are no gap, > 0 [s]
 * @returns one span per longer interval, from the sample before to the sample after, in time order [s]
 * @throws {@link InputError} `out-of-range` for the length
 *
 * Source: definition
 */
export function findGaps(timesS: Float64Array, longerThanS: number): Interval[] {
  requireRange(longerThanS, longerThanS > 0, 'longerThanS', '> 0');
  const gaps: Interval[] = [];
  for (let i = 1; i < timesS.length; i++) {
    const fromS = timesS[i - 1];
    const toS = timesS[i];
    if (toS - fromS > longerThanS) gaps.push({ fromS, toS });
  }
  return gaps;
}

/**
 * Longest stretch without samples inside a span; of a gap that reaches beyond the span only the part inside counts.
 *
 * @param gaps - stretches without samples [s]
 * @param fromS - start of the span [s]
 * @param toS - end of the span [s]
 * @returns the longest overlap, 0 when the span holds no gap [s]
 *
 * Source: definition
 */
export function longestGapS(gaps: readonly Interval[], fromS: number, toS: number): number {
  let longestS = 0;
  for (const gap of gaps) longestS = Math.max(longestS, overlapS(gap, { fromS, toS }));
  return longestS;
}
