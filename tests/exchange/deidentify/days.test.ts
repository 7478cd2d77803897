import { dayNumber, dayOffsets, daysSince } from '@surae/exchange';
import { expect, test } from 'vitest';

test('days since the first visit of each person, on the calendar of the place', () => {
  const offsets = dayOffsets([
    { person: 'a', at: '2026-03-05T23:50:00+02:00' },
    { person: 'a', at: '2026-02-26' },
    { person: 'b', at: '2024-02-28T10:00:00Z' },
    { person: 'b', at: '2024-03-01T01:00:00-05:00' },
    { person: 'b', at: null },
  ]);
  // 2024 is a leap year, 2026 is none
  expect(offsets).toEqual([7, 0, 0, 2, null]);
});

test('what begins with no day has none', () => {
  expect([dayNumber('1970-01-02'), dayNumber('2'), dayNumber('2026-13-45'), dayNumber(null)]).toEqual([
    1,
    null,
    null,
    null,
  ]);
});

test('other things are counted from the first visit, before it below zero, and without one not at all', () => {
  const visits = [
    { person: 'a', at: '2026-03-05T09:00:00+01:00' },
    { person: 'a', at: '2026-04-05T09:00:00+02:00' },
    { person: 'b', at: null },
  ];
  const on = (person: string, at: string | null) => ({ person, at });
  expect(
    daysSince(visits, [
      on('a', '2026-03-01'),
      on('a', '2026-03-06'),
      on('a', null),
      on('b', '2026-03-01'),
      on('c', '2026-03-01'),
    ]),
  ).toEqual([-4, 1, null, null, null]);
});
