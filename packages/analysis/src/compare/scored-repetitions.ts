import type { Count } from '../assess/report.ts';
import type { MeasuredValue } from './measured-value.ts';
import type { Reliability } from './reliability.ts';

/** standard uncertainties on each side of a 95 % interval */
const REACH = 1.96;

/**
 * Standard uncertainty of a count by itself.
 *
 * @param count - of the set, with its 95 % bounds [-]
 * @returns half the width of the interval in standard uncertainties [-]
 *
 * Source: JCGM 100:2008, 4.3.4
 */
export function countU({ scoredLow, scoredHigh }: Pick<Count, 'scoredLow' | 'scoredHigh'>): number {
  return (scoredHigh - scoredLow) / (2 * REACH);
}

/**
 * The scored repetitions of a set as a value to compare: its uncertainty is that from one test to the next together with that
 * of the count itself, as if they were independent, which is cautious.
 *
 * @param count - of the set, with its 95 % bounds [-]
 * @param reliability - error of such counts in repetitions; null where none is known [-]
 * @returns the value; its uncertainty is null where no error in repetitions is known, never the count's own alone [-]
 *
 * Source: ours; JCGM 100:2008, 5.1.2
 */
export function scoredRepetitions(
  count: Pick<Count, 'scored' | 'scoredLow' | 'scoredHigh'>,
  reliability: Reliability | null,
): MeasuredValue {
  const own = countU(count);
  const convention = 'scored repetitions';
  if (reliability === null || reliability.unit !== '1') return { value: count.scored, u: null, unit: '1', convention };
  const { scale, standardError } = reliability;
  const between = scale === 'log' ? standardError * count.scored : standardError;
  return { value: count.scored, u: Math.hypot(between, own), unit: '1', convention };
}
