import { RUNNING_NUMBERS, type RunningNumbers } from '@surae/shared';
import { calendarDay } from '../course/calendar-day.ts';
import { GuidanceError } from '../guidance-error.ts';
import type { Held } from '../verdict.ts';
import { dayOfNumber } from './day-of-number.ts';
import { type CountedRun, type RunLog, runsBetween } from './run-log.ts';
import { type SessionCap, sessionCap } from './session-cap.ts';

/** What the next run goes by. */
export interface RunReturn {
  readonly log: RunLog;
  /** day of the session that is planned, by the calendar of the place */
  readonly day: string;
  /** day of the first session of this return; null where there was none: what was run before it lifts no cap of the return */
  readonly begun: string | null;
  /** whether everything that is asked for before running is met */
  readonly criteria: Held;
  /** whether the pain of the last session kept to its limit, and whether the morning after it was steady */
  readonly painHeld: Held;
  readonly morningSteady: Held;
}

/** What is proposed for a day. */
export interface NextRun {
  /**
   * `not-yet` the criteria are not met, or cannot be told; `first` the first session; `rest` the last one is too near; `same` no more than last time, since
   * the morning is not known; `ease` no more than last time, since pain or morning were over; `step` one thing more; `again` begun again after a gap
   */
  readonly step: 'not-yet' | 'first' | 'rest' | 'same' | 'ease' | 'step' | 'again';
  /** running in all, at most; null on a day without a run [s] */
  readonly mostS: number | null;
  /** way, at most; null on a day without a run, or where a first session goes by time [m] */
  readonly mostM: number | null;
  /** the first day on which the next run may be, on a day of rest */
  readonly from: string | null;
  /** of all runs of the days before; the return goes by its own */
  readonly cap: SessionCap;
  /** of the runs of the return alone, which is what its runs keep to; null before its first one, on a day of rest, and after a gap */
  readonly ofReturn: SessionCap | null;
  readonly settledBy: readonly ('criteria' | 'pain' | 'morning' | 'runs-of-days' | 'time-of-runs' | 'way-of-runs')[];
}

function least(...most: readonly (number | null)[]): number | null {
  const told = most.filter((one) => one !== null);
  return told.length === 0 ? null : Math.min(...told);
}

/** The longest of the last day: two runs on one day are two sessions. */
function longestOf(runs: readonly CountedRun[], measure: 'durationS' | 'distanceM'): number | null {
  const told = runs.flatMap((run) => run[measure] ?? []);
  return told.length === 0 ? null : Math.max(...told);
}

/**
 * The next run of a return: a first session of a few minutes whatever was run before, alternate days, a step only after the next
 * morning, and never over the cap of the day.
 *
 * @param given - see {@link RunReturn} [s, m]
 * @param numbers - see `RUNNING_NUMBERS` [unit of the number]
 * @returns what is proposed; the clinician decides [s, m]
 * @throws {@link GuidanceError} `not-an-answer` for what is no day, and for a return that begins after the day
 *
 * Source: common practice, no source; {@link sessionCap}
 */
export function nextRun(given: RunReturn, numbers: RunningNumbers = RUNNING_NUMBERS): NextRun {
  const { log, day, begun } = given;
  const today = calendarDay(day);
  const cap = sessionCap(log, day, numbers);
  const none = { mostS: null, mostM: null, from: null, cap, ofReturn: null };
  if (given.criteria !== 'yes')
    return { ...none, step: 'not-yet', settledBy: given.criteria === 'no' ? [] : ['criteria'] };
  const first = { ...none, mostS: numbers.firstS.value, settledBy: [] };
  if (begun === null) return { ...first, step: 'first' };
  const since = calendarDay(begun);
  if (since > today) throw new GuidanceError('not-an-answer', { fact: 'begun', value: begun });
  // a run of this day is the last one: the next waits for the day after its rest
  const runs = runsBetween(log, since, today);
  const last = runs.at(-1);
  if (last === undefined) return { ...first, step: 'first' };
  const away = today - last.day;
  const { daysBetween, gap } = numbers;
  if (away <= daysBetween.value) {
    return { ...none, step: 'rest', from: dayOfNumber(last.day + daysBetween.value + 1), settledBy: [] };
  }
  if (away > gap.value) return { ...first, step: 'again' };
  // what was run before the return lifts no cap of it, so that days before it need not be known
  const before = { from: dayOfNumber(today - numbers.window.value), until: dayOfNumber(since - 1) };
  const ofReturn = sessionCap({ runs, kept: [...log.kept, before] }, day, numbers);
  const lastRuns = runs.filter((run) => run.day === last.day);
  const [lastS, lastM] = [longestOf(lastRuns, 'durationS'), longestOf(lastRuns, 'distanceM')];
  const [mostS, mostM] = [ofReturn.time.most, ofReturn.way.most];
  const open = [...new Set([...ofReturn.time.settledBy, ...ofReturn.way.settledBy])];
  const { painHeld, morningSteady } = given;
  const noMore = { ...none, ofReturn, mostS: least(mostS, lastS), mostM: least(mostM, lastM) };
  if (painHeld === 'no' || morningSteady === 'no') return { ...noMore, step: 'ease', settledBy: open };
  const asked: NextRun['settledBy'] = [
    ...(painHeld === 'yes' ? [] : (['pain'] as const)),
    ...(morningSteady === 'yes' ? [] : (['morning'] as const)),
  ];
  if (asked.length > 0) return { ...noMore, step: 'same', settledBy: [...asked, ...open] };
  return { ...none, ofReturn, step: 'step', mostS, mostM, settledBy: open };
}
