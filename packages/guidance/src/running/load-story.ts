import { LONGEST_RUN_BANDS, type LongestRunBand, RUNNING_NUMBERS, type RunningNumbers } from '@surae/shared';
import { calendarDay } from '../course/calendar-day.ts';
import { dayOfNumber } from './day-of-number.ts';
import { type CountedRun, type RunLog, runsBetween, unknownDays } from './run-log.ts';

/** One run beside the longest of the days before it. */
export interface RunJump {
  readonly on: string;
  readonly measure: 'distanceM' | 'durationS';
  /** [m or s] */
  readonly run: number;
  /** longest of the days before; null where none was written down [m or s] */
  readonly longest: number | null;
  /** share over it; null where there is none to hold it against [-] */
  readonly over: number | null;
  readonly band: LongestRunBand | null;
  /** days before, of which it is not known whether there was a run: a longer one in them would make the jump smaller [d] */
  readonly unknownDays: number;
}

/** What was run in a week. */
export interface WeekRun {
  /** first day of the week [-] */
  readonly from: string;
  /** null where a day or the measure of a run is not known: what is known is no total [m or s] */
  readonly total: number | null;
}

/** What jumped before a complaint began. */
export interface LoadStory {
  readonly measure: RunJump['measure'];
  /** the run that went furthest over the longest one before it; null where none did, or none could be held against anything */
  readonly largest: RunJump | null;
  /** every run over the lowest band, the furthest first */
  readonly jumps: readonly RunJump[];
  /** runs that cannot be held against anything, since nothing of the days before is known */
  readonly untold: readonly RunJump[];
  /** for reading beside it; from week to week the study found no relation [-] */
  readonly weeks: readonly WeekRun[];
}

/** The band of a share over the longest run. Source: `LONGEST_RUN_BANDS`. */
export function bandOf(run: number, longest: number): LongestRunBand | null {
  // held against lengths and not against the quotient: 11 km is not more than a tenth over 10 km
  const most = (share: number): number => longest * (1 + share);
  return LONGEST_RUN_BANDS.find(({ over: [, to] }) => to === null || run <= most(to)) ?? null;
}

function jumpOf(
  run: CountedRun,
  all: readonly CountedRun[],
  log: RunLog,
  measure: RunJump['measure'],
  window: number,
): RunJump {
  const value = run[measure] ?? 0;
  const before = all.filter(({ day }) => day < run.day && day >= run.day - window).flatMap((one) => one[measure] ?? []);
  const longest = before.length === 0 ? null : Math.max(...before);
  return {
    on: run.on,
    measure,
    run: value,
    longest,
    over: longest === null ? null : value / longest - 1,
    band: longest === null ? null : bandOf(value, longest),
    unknownDays: unknownDays(log, run.day - window, run.day - 1).length,
  };
}

/**
 * What jumped before a complaint began: each run beside the longest of the days before it. It tells of lengths and says nothing of
 * what caused the complaint.
 *
 * @param log - see {@link RunLog} [s, m]
 * @param began - first day of the complaint; its own runs count, since a complaint may begin in one [-]
 * @param measure - by way or by time [-]
 * @param numbers - see `RUNNING_NUMBERS` [unit of the number]
 * @returns jumps with their bands, and totals of weeks [s, m]
 * @throws {@link GuidanceError} `not-an-answer` for what is no day, no time or no way
 *
 * Source: Frandsen 2025 Br J Sports Med 59:1203 for windows and bands; an association in runners without a complaint
 */
export function loadStory(
  log: RunLog,
  began: string,
  measure: RunJump['measure'] = 'distanceM',
  numbers: RunningNumbers = RUNNING_NUMBERS,
): LoadStory {
  const until = calendarDay(began);
  const from = until - numbers.story.value + 1;
  const window = numbers.window.value;
  const all = runsBetween(log, from - window, until);
  const runs = all.filter((run) => run.day >= from && run[measure] !== null);
  const each = runs.map((run) => jumpOf(run, all, log, measure, window));
  const jumps = each
    .filter(({ band }) => band !== null && band.code !== 'within')
    .toSorted((one, other) => (other.over ?? 0) - (one.over ?? 0));
  const weeks = Array.from({ length: Math.floor((until - from + 1) / 7) }, (_, i): WeekRun => {
    const last = until - 7 * i;
    const week = all.filter(({ day }) => day > last - 7 && day <= last);
    const isWhole = unknownDays(log, last - 6, last).length === 0 && week.every((run) => run[measure] !== null);
    const total = week.reduce((sum, run) => sum + (run[measure] ?? 0), 0);
    return { from: dayOfNumber(last - 6), total: isWhole ? total : null };
  }).toReversed();
  return { measure, largest: jumps[0] ?? null, jumps, untold: each.filter(({ longest }) => longest === null), weeks };
}
