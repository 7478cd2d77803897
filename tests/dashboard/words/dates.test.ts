import { expect, test } from 'vitest';
import { dayOf, shortDayOf, timeOf } from '../../../apps/dashboard/src/words/dates.ts';

test('a day is said as it was written, wherever it is read', () => {
  expect(dayOf('2026-11-25T09:30:00.000+01:00')).toBe('25 Nov 2026');
  // in UTC this is the day before, and it was still the 26th for whoever wrote it
  expect(dayOf('2026-11-26T00:30:00.000+13:00')).toBe('26 Nov 2026');
  expect(dayOf('2026-11-25T23:59:00.000-11:00')).toBe('25 Nov 2026');
});

test('another locale says it in its own way', () => {
  expect(dayOf('2026-03-01T09:30:00.000Z', 'de-DE')).toBe('1. März 2026');
});

test('a day without its year is the same day', () => {
  expect(shortDayOf('2026-11-25T23:30:00.000-05:00')).toBe('25 Nov');
});

test('a time is told to the minute, as it was written', () => {
  expect(timeOf('2026-11-25T09:05:59.000+01:00')).toBe('09:05');
});
