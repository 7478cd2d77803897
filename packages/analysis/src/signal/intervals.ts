/** A span of time on the recording's clock, half-open [s]. */
export interface Interval {
  readonly fromS: number;
  readonly toS: number;
}

/**
 * Length of a span.
 *
 * @param interval - the span [s]
 * @returns its length, 0 when it ends before it begins [s]
 *
 * Source: definition
 */
export function durationS(interval: Interval): number {
  return Math.max(0, interval.toS - interval.fromS);
}

/**
 * Whether an instant lies in a span; the start belongs to it, the end does not.
 *
 * @param interval - the span [s]
 * @param timeS - the instant [s]
 * @returns true when it lies inside [-]
 *
 * Source: definition
 */
export function contains(interval: Interval, timeS: number): boolean {
  return timeS >= interval.fromS && timeS < interval.toS;
}

/**
 * Time that two spans have in common.
 *
 * @param first - the one span [s]
 * @param second - the other span [s]
 * @returns length of the overlap, 0 when they only touch or lie apart [s]
 *
 * Source: definition
 */
export function overlapS(first: Interval, second: Interval): number {
  return Math.max(0, Math.min(first.toS, second.toS) - Math.max(first.fromS, second.fromS));
}

/**
 * The same instants as spans that do not overlap, in time order; spans that touch become one.
 *
 * @param intervals - spans in any order; empty ones are left out [s]
 * @returns disjoint spans in time order [s]
 *
 * Source: definition
 */
export function mergeIntervals(intervals: readonly Interval[]): Interval[] {
  const ordered = intervals.filter((one) => one.toS > one.fromS).sort((a, b) => a.fromS - b.fromS);
  const merged: Interval[] = [];
  for (const next of ordered) {
    const last = merged.at(-1);
    if (last !== undefined && next.fromS <= last.toS) {
      merged[merged.length - 1] = { fromS: last.fromS, toS: Math.max(last.toS, next.toS) };
    } else {
      merged.push({ fromS: next.fromS, toS: next.toS });
    }
  }
  return merged;
}
