import type { LeastDelay } from './least-delay.ts';
import { hostMsAt, hostUncertaintyMsAt, type SourceFit } from './source-clock.ts';

/** The clock of one source on that of another: time of the other = `offsetS` + `rate` * time of the one. */
export interface ClockMap {
  /** time of the other when the one reads 0 [s] */
  readonly offsetS: number;
  /** seconds that the other counts in one of the one [-] */
  readonly rate: number;
}

/** How well two sources lie on one time line. */
export interface Alignment {
  readonly map: ClockMap;
  /** standard uncertainty of a time of the one beside a time of the other, where it is largest while both were heard [ms] */
  readonly uncertaintyMs: number;
  /** the true time lies within this of the stated one, 95 times in 100, likewise [ms] */
  readonly withinMs: number;
  /** how much of that comes of delays on the way that nobody can see [ms] */
  readonly delayWithinMs: number;
  /** while both were heard, by the clock of the other [s] */
  readonly fromS: number;
  readonly toS: number;
}

/** Why two sources cannot be laid on one time line. */
export type NotAligned =
  /** too little came of one of them to know its clock */
  | 'too-short'
  /** they were never heard at the same time */
  | 'never-together';

export type AlignmentAnswer =
  | { readonly kind: 'aligned'; readonly alignment: Alignment }
  | { readonly kind: 'not-aligned'; readonly reason: NotAligned };

/** What is known of one source. */
export interface AlignedSource {
  /** null when too little came */
  readonly fit: SourceFit | null;
  readonly leastDelay: LeastDelay;
}

/**
 * Half width of the middle 95 % of the difference of two values that lie anywhere in two ranges, from the middle of that difference.
 * The difference of two even spreads is a trapezium; its ends hold one part in 40 each.
 */
export function spreadWithin(one: number, other: number): number {
  const [narrow, wide] = one < other ? [one, other] : [other, one];
  if (wide === 0) return 0;
  // the slope of the trapezium holds narrow / (2 wide) of the whole at each end
  const inTail = 0.025;
  if (inTail * 2 * wide <= narrow) return (wide + narrow) / 2 - Math.sqrt(2 * inTail * wide * narrow);
  return wide / 2 - inTail * wide;
}

/**
 * Lays the clock of one source on that of another. Each is known beside the clock of the host from the earliest arrivals; what the
 * quickest arrival took on its way is not, and lies somewhere in a range that has to be told.
 */
export function alignClocks(one: AlignedSource, other: AlignedSource): AlignmentAnswer {
  if (one.fit === null || other.fit === null) return { kind: 'not-aligned', reason: 'too-short' };
  const map = mapOf(one.fit, other.fit, middleOf(one.leastDelay) - middleOf(other.leastDelay));
  const fromS = Math.max(other.fit.fromS, map.offsetS + map.rate * one.fit.fromS);
  const toS = Math.min(other.fit.toS, map.offsetS + map.rate * one.fit.toS);
  if (fromS >= toS) return { kind: 'not-aligned', reason: 'never-together' };
  const { fit: first } = one;
  const { fit: second } = other;
  // the uncertainty of a line is least in its middle: the largest is at an end
  const fitMs = Math.max(
    ...[fromS, toS].map((otherS) =>
      Math.hypot(hostUncertaintyMsAt(first, (otherS - map.offsetS) / map.rate), hostUncertaintyMsAt(second, otherS)),
    ),
  );
  const widths = [one, other].map(({ leastDelay }) => leastDelay.toMs - leastDelay.fromMs) as [number, number];
  const delayWithinMs = spreadWithin(...widths);
  return {
    kind: 'aligned',
    alignment: {
      map,
      uncertaintyMs: Math.hypot(fitMs, widths[0] / Math.sqrt(12), widths[1] / Math.sqrt(12)),
      withinMs: Math.hypot(2 * fitMs, delayWithinMs),
      delayWithinMs,
      fromS,
      toS,
    },
  };
}

function middleOf({ fromMs, toMs }: LeastDelay): number {
  return (fromMs + toMs) / 2;
}

/** Both lines, the quickest arrivals of the one so much slower than those of the other [ms]. */
function mapOf(one: SourceFit, other: SourceFit, slowerMs: number): ClockMap {
  const otherRate = 1 + other.driftPpm * 1e-6;
  const rate = otherRate / (1 + one.driftPpm * 1e-6);
  const offsetS = ((hostMsAt(one, 0) - slowerMs - other.offsetMs) * otherRate) / 1000;
  return { offsetS, rate };
}
