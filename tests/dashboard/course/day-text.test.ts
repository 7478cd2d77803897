import { dayNumber } from '@surae/casebook';
import { expect, test } from 'vitest';
import { dayText } from '../../../apps/dashboard/src/course/day-text.ts';

test.each(['1970-01-01', '2024-02-29', '2026-03-29', '2026-12-31'])('%s is the day of its own number', (day) => {
  expect(dayText(dayNumber(day)!)).toBe(day);
});
