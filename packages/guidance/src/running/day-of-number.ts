const dayMs = 86_400_000;

/**
 * The day of the calendar of a number of days.
 *
 * @param day - see `calendarDay` [d]
 * @returns such as 2026-03-01 [-]
 *
 * Source: ISO 8601-1:2019, calendar dates
 */
export function dayOfNumber(day: number): string {
  return new Date(day * dayMs).toISOString().slice(0, 10);
}
