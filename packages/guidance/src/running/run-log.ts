import { calendarDay } from '../course/calendar-day.ts';
import { GuidanceError } from '../guidance-error.ts';

/** A run that was written down, by time, by way or by both. */
export interface RunDone {
  /** by the calendar of the place */
  readonly on: string;
  /** of running alone, without the walking between [s] */
  readonly durationS: number | null;
  readonly distanceM: number | null;
  /** a walk is no run and never counts; absent is a run */
  readonly kind?: 'run' | 'run-walk' | 'walk';
}

/** Days, both ends included. */
export interface DaySpan {
  readonly from: string;
  readonly until: string;
}

/** Runs of a person, and of which days it is known that every run was written down. */
export interface RunLog {
  readonly runs: readonly RunDone[];
  /** a day in one of these without a run had none; any other day without a run is unknown */
  readonly kept: readonly DaySpan[];
}

/** Runs that count, in the order of their days, with the day as a number. */
export interface CountedRun extends RunDone {
  readonly day: number;
}

function checked(name: 'durationS' | 'distanceM', value: number | null): void {
  if (value !== null && !(Number.isFinite(value) && value > 0))
    throw new GuidanceError('not-an-answer', { fact: name, value });
}

/**
 * Runs of a span of days, walks left out.
 *
 * @param log - see {@link RunLog} [s, m]
 * @param from - first day, see {@link calendarDay} [d]
 * @param until - last day [d]
 * @returns in the order of their days [s, m]
 * @throws {@link GuidanceError} `not-an-answer` for a time or way that is none
 *
 * Source: ours
 */
export function runsBetween(log: RunLog, from: number, until: number): readonly CountedRun[] {
  return log.runs
    .map((run) => {
      checked('durationS', run.durationS);
      checked('distanceM', run.distanceM);
      return { ...run, day: calendarDay(run.on) };
    })
    .filter(({ day, kind }) => kind !== 'walk' && day >= from && day <= until)
    .toSorted((one, other) => one.day - other.day);
}

/**
 * Days of a span of which it is not known whether there was a run, or another one: those outside of every kept span.
 *
 * @param log - see {@link RunLog} [-]
 * @param from - first day [d]
 * @param until - last day [d]
 * @returns the days [d]
 *
 * Source: ours
 */
export function unknownDays(log: RunLog, from: number, until: number): readonly number[] {
  const spans = log.kept.map((span) => [calendarDay(span.from), calendarDay(span.until)] as const);
  const days = Array.from({ length: Math.max(0, until - from + 1) }, (_, i) => from + i);
  return days.filter((day) => !spans.some(([first, last]) => day >= first && day <= last));
}
