import { GuidanceError } from '../guidance-error.ts';

const dayMs = 86_400_000;

/**
 * Number of a day of the calendar; two days that follow one another differ by 1, whatever the clock does between them.
 *
 * @param day - such as 2026-03-01 [-]
 * @returns days since 1970-01-01 [d]
 * @throws {@link GuidanceError} `not-an-answer` for what is no day
 *
 * Source: ISO 8601-1:2019, calendar dates
 */
export function calendarDay(day: string): number {
  const ms = /^\d{4}-\d{2}-\d{2}$/.test(day) ? Date.parse(`${day}T00:00:00Z`) : Number.NaN;
  // 31 February is read as a day of March by some engines
  if (Number.isNaN(ms) || new Date(ms).toISOString().slice(0, 10) !== day) {
    throw new GuidanceError('not-an-answer', { fact: 'day', value: day });
  }
  return ms / dayMs;
}
