import { expect, test } from 'vitest';
import { calendarDay } from '../../../packages/guidance/src/course/calendar-day.ts';
import { dayOfNumber } from '../../../packages/guidance/src/running/day-of-number.ts';

test('a day goes there and back, over months, leap years and the clock change', () => {
  expect(dayOfNumber(0)).toBe('1970-01-01');
  expect(dayOfNumber(calendarDay('2026-03-01') - 1)).toBe('2026-02-28');
  expect(dayOfNumber(calendarDay('2024-03-01') - 1)).toBe('2024-02-29');
  expect(dayOfNumber(calendarDay('2026-03-28') + 2)).toBe('2026-03-30');
});
