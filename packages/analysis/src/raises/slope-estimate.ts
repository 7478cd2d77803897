import { theilSen } from '../signal/line.ts';

/** A figure with its 95 % interval; the bounds are null where there are too few points. */
export interface Estimate {
  readonly value: number;
  readonly low: number | null;
  readonly high: number | null;
}

/** points from which a slope is given, and from which its rank interval can hold 95 % at all */
const LEAST_POINTS = 3;
const LEAST_POINTS_FOR_INTERVAL = 5;

/**
 * Robust slope of y on x with its 95 % interval.
 *
 * @param points - pairs of any order, x not all equal [unit of x, unit of y]
 * @returns the slope; null with fewer than three points, its bounds null with fewer than five [unit of y per unit of x]
 *
 * Source: Sen (1968), J Am Stat Assoc 63:1379-1389
 */
export function slopeEstimate(points: readonly { readonly x: number; readonly y: number }[]): Estimate | null {
  if (points.length < LEAST_POINTS) return null;
  const line = theilSen(
    points.map((point) => point.x),
    points.map((point) => point.y),
  );
  // with four points even the widest rank interval holds only 22 of 24 orders, 92 %
  const known = points.length >= LEAST_POINTS_FOR_INTERVAL;
  return { value: line.slope, low: known ? line.slopeLow : null, high: known ? line.slopeHigh : null };
}
