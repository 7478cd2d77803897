import { expect, test } from 'vitest';
import { dayBefore } from '../../../apps/dashboard/src/course/day-before.ts';

test('the day before is one of the calendar, over months, years and leap days', () => {
  expect(['2026-03-02', '2026-03-01', '2028-03-01', '2026-01-01'].map(dayBefore)).toEqual([
    '2026-03-01',
    '2026-02-28',
    '2028-02-29',
    '2025-12-31',
  ]);
  expect(dayBefore('soon')).toBe('');
});
