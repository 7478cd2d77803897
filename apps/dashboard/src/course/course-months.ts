import type { CourseDay } from './course-days.ts';

/** Days of one month that lie back, the newest first. */
export interface CourseMonth {
  /** year and month, such as 2026-10 */
  readonly month: string;
  readonly days: readonly CourseDay[];
}

/** Days that stand open, and those before them by month. */
export interface CourseSpan {
  readonly open: readonly CourseDay[];
  readonly months: readonly CourseMonth[];
}

/** How many days with entries stand open: what happened since the last visits is read, what was before is looked up. */
const OPEN_DAYS = 12;

/**
 * Splits a line of time, so that twelve weeks of days can be looked through.
 *
 * @param days - the newest first [-]
 * @returns days that stand open, and those before them by month, the newest first [-]
 *
 * Source: ours
 */
export function courseMonths(days: readonly CourseDay[]): CourseSpan {
  const older = days.slice(OPEN_DAYS);
  const names = [...new Set(older.map(({ day }) => day.slice(0, 7)))];
  return {
    open: days.slice(0, OPEN_DAYS),
    months: names.map((month) => ({ month, days: older.filter(({ day }) => day.startsWith(month)) })),
  };
}
