import { normalQuantile } from '../signal/normal.ts';
import type { Estimate } from './slope-estimate.ts';

/**
 * The 95 % interval of a slope for values that were told in whole steps: each stands for anything up to half a step away, so that
 * a pair of them stands for every slope within a step over its distance. The ranks of Sen's interval are taken, without ties,
 * among the least slopes of the pairs for the lower bound and among the greatest for the upper one. Each slope of what was told
 * in steps lies between the two of its pair, and so does each rank of them: the interval holds the one of the values behind the
 * steps, whatever they are, and is never a point.
 *
 * @param estimate - the slope, whose bounds are null where there are too few points for one [unit of y per unit of x]
 * @param points - those that it is of, no two at one place [unit of x, unit of y]
 * @param step - between two values that can be told, > 0 [unit of y]
 * @returns the slope with bounds that the steps allow [unit of y per unit of x]
 *
 * Source: Sen (1968), J Am Stat Assoc 63:1379-1389, for the ranks; JCGM 100:2008 (GUM) F.2.2.1 for half a step either way; that
 * ranks keep an order that holds pair by pair is elementary
 */
export function steppedSlope(
  { value, low, high }: Estimate,
  points: readonly { readonly x: number; readonly y: number }[],
  step: number,
): Estimate {
  if (low === null || high === null) return { value, low, high };
  const n = points.length;
  const pairs = points.flatMap((one, i) =>
    points.slice(i + 1).map((other) => ({ dx: other.x - one.x, dy: other.y - one.y })),
  );
  const ends = (by: number): Float64Array =>
    Float64Array.from(pairs, ({ dx, dy }) => dy / dx + by / Math.abs(dx)).sort();
  const reach = normalQuantile(0.975) * Math.sqrt((n * (n - 1) * (2 * n + 5)) / 18);
  const lowRank = Math.max(Math.round((pairs.length - reach) / 2) - 1, 0);
  const highRank = Math.min(Math.round((pairs.length + reach) / 2), pairs.length - 1);
  return { value, low: ends(-step)[lowRank], high: ends(step)[highRank] };
}
