import { quantileInPlace } from '../signal/order-statistics.ts';

/**
 * Standard deviation by which stamps depart from a regular beat, by their intervals; gaps do not count. Whether the samples
 * or only their stamps are uneven cannot be told, so that it is the most that a stamp may be wrong by.
 *
 * @param timesS - sample times, strictly rising [s]
 * @returns scaled median absolute deviation of the intervals over the root of two; 0 for fewer than three samples [s]
 *
 * Source: definition; the difference of two independent stamps has twice the variance of one
 */
export function stampJitterS(timesS: Float64Array): number {
  if (timesS.length < 3) return 0;
  const intervals = new Float64Array(timesS.length - 1);
  for (let i = 0; i < intervals.length; i++) intervals[i] = timesS[i + 1] - timesS[i];
  const usual = quantileInPlace(intervals.slice(), 0.5);
  return (
    (1.4826 *
      quantileInPlace(
        intervals.map((one) => Math.abs(one - usual)),
        0.5,
      )) /
    Math.SQRT2
  );
}
