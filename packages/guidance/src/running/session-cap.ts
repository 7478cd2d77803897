import { RUNNING_NUMBERS, type RunningNumbers } from '@surae/shared';
import { calendarDay } from '../course/calendar-day.ts';
import type { Held } from '../verdict.ts';
import { type CountedRun, type RunLog, runsBetween, unknownDays } from './run-log.ts';

/** What would have to be known for a cap to be known. */
export type CapSettledBy = 'runs-of-days' | 'time-of-runs' | 'way-of-runs';

/** How long one session may be, by one measure. */
export interface Cap {
  /** longest that was written down; null where none was [s or m] */
  readonly longest: number | null;
  readonly on: string | null;
  /** what is proposed: where the cap cannot be told, the lowest that it can be [s or m] */
  readonly most: number;
  /** what it came from: a share over the longest, or the least that a cap is */
  readonly by: 'growth' | 'floor';
  /** yes where it is known, and never no */
  readonly known: Exclude<Held, 'no'>;
  readonly settledBy: readonly CapSettledBy[];
}

/** The cap of a day, by time and by way; a session keeps to whichever it reaches first. */
export interface SessionCap {
  readonly time: Cap;
  readonly way: Cap;
  /** days of the window of which it is not known whether somebody ran [d] */
  readonly unknownDays: number;
}

/**
 * How long a session may be after a longest one: a share more, and at least a floor. Rounded down to a whole unit.
 *
 * @param longest - null where there is none [s or m]
 * @param growth - share more [-]
 * @param floor - the least that a cap is [s or m]
 * @returns the cap [s or m]
 *
 * Source: ours; the share see `RUNNING_NUMBERS`
 */
export function cappedAt(longest: number | null, growth: number, floor: number): number {
  return Math.max(longest === null ? 0 : Math.floor(longest * (1 + growth)), floor);
}

function capOf(
  runs: readonly CountedRun[],
  measure: 'durationS' | 'distanceM',
  growth: number,
  floor: number,
  isWhole: boolean,
): Cap {
  const told = runs.filter((run) => run[measure] !== null);
  const [first, ...rest] = told;
  const run = rest.reduce<CountedRun | undefined>(
    (best, one) => (best === undefined || (one[measure] ?? 0) > (best[measure] ?? 0) ? one : best),
    first,
  );
  const longest = run?.[measure] ?? null;
  const most = cappedAt(longest, growth, floor);
  const settledBy: CapSettledBy[] = isWhole ? [] : ['runs-of-days'];
  if (told.length < runs.length) settledBy.push(measure === 'durationS' ? 'time-of-runs' : 'way-of-runs');
  return {
    longest,
    on: run?.on ?? null,
    most,
    by: most > floor ? 'growth' : 'floor',
    known: settledBy.length === 0 ? 'yes' : 'cannot-tell',
    settledBy,
  };
}

/**
 * How long one session may be on a day, from the person's own runs of the days before. A run that was not written down could only
 * raise it, so that what is proposed is never more than the rule allows.
 *
 * @param log - see {@link RunLog} [s, m]
 * @param day - of the session; runs of this day and later ones do not count [-]
 * @param numbers - see `RUNNING_NUMBERS`, or a clinic's own [unit of the number]
 * @returns the caps by time and by way [s, m]
 * @throws {@link GuidanceError} `not-an-answer` for what is no day, no time or no way
 *
 * Source: Frandsen 2025 Br J Sports Med 59:1203 for share and window; the floor is common practice, no source
 */
export function sessionCap(log: RunLog, day: string, numbers: RunningNumbers = RUNNING_NUMBERS): SessionCap {
  const until = calendarDay(day) - 1;
  const from = until - numbers.window.value + 1;
  const runs = runsBetween(log, from, until);
  const open = unknownDays(log, from, until).length;
  const growth = numbers.growth.value;
  return {
    time: capOf(runs, 'durationS', growth, numbers.floorS.value, open === 0),
    way: capOf(runs, 'distanceM', growth, numbers.floorM.value, open === 0),
    unknownDays: open,
  };
}
