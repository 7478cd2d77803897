import { RELATIVE_LOADS, TENDON_LOADS, type TendonLoad } from '@surae/shared';
import { GuidanceError } from '../guidance-error.ts';
import { weakestOf } from './weakest-of.ts';

/** Lowest and highest, never one number. */
export type LoadRange = readonly [number, number];

/** Peak load on a tendon beside that of a raise on the same leg at body weight. It is an estimate, and rough. */
export interface RelativeRange {
  /** [-] */
  readonly range: LoadRange;
  /** what it rests on: the source of each figure */
  readonly from: readonly TendonLoad[];
  readonly mark: TendonLoad['mark'];
}

/** Inverse dynamics: methods that may be held against one another. Tensiometry reads about twice as much. */
const alike = TENDON_LOADS.filter(({ method }) => method !== 'tensiometry');

/**
 * Peak load on a tendon in an activity, beside a raise on the same leg.
 *
 * @param activity - see {@link TendonLoad} [-]
 * @returns the range over every pair of figures of comparable methods; a raise itself is 1 [-]
 *
 * Source: see `TENDON_LOADS`; of one method the arm of the tendon cancels
 */
export function relativeTo(activity: TendonLoad['activity']): RelativeRange {
  const of = (one: TendonLoad['activity']): TendonLoad[] => alike.filter((entry) => entry.activity === one);
  const raise = of('single-raise');
  if (activity === 'single-raise') return { range: [1, 1], from: [], mark: 'computed' };
  const from = [...of(activity), ...raise];
  const low = Math.min(...of(activity).map(({ range }) => range[0])) / Math.max(...raise.map(({ range }) => range[1]));
  const high = Math.max(...of(activity).map(({ range }) => range[1])) / Math.min(...raise.map(({ range }) => range[0]));
  return { range: [low, high], from, mark: weakestOf(from.map(({ mark }) => mark)) };
}

/**
 * Peak load on one tendon in an exercise, beside a raise on the same leg at body weight.
 *
 * @param exercise - code of `EXERCISES` [-]
 * @param extra - load that is held or carried, of body weight; null is not known [-]
 * @returns null where nothing that was read tells, or a load is carried and the mass is not known [-]
 * @throws {@link GuidanceError} `not-an-answer` for a load that is none
 *
 * Source: see `RELATIVE_LOADS`; an added load counts like body weight, which is ours
 */
export function relativeOf(exercise: string, extra: number | null): RelativeRange | null {
  if (extra !== null && !(Number.isFinite(extra) && extra >= 0))
    throw new GuidanceError('not-an-answer', { fact: 'load', value: extra });
  const of = RELATIVE_LOADS.find((one) => one.exercise === exercise)?.of ?? null;
  if (of === null || extra === null) return null;
  // on the seat body weight is not carried: a load there is no share of what is known of it
  const isCarried = of === 'single-raise' || of === 'half-raise';
  if (!isCarried) return extra > 0 ? null : relativeTo(of);
  const share = (of === 'half-raise' ? 0.5 : 1) * (1 + extra);
  return { range: [share, share], from: [], mark: 'computed' };
}
