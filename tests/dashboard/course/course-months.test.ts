import { expect, test } from 'vitest';
import { courseMonths } from '../../../apps/dashboard/src/course/course-months.ts';

const day = (iso: string) => ({ day: iso, lines: [], emptyBelow: 0, isToCome: false });
const days = Array.from({ length: 70 }, (_, back) =>
  day(new Date(Date.UTC(2026, 10, 30) - back * 86_400_000).toISOString().slice(0, 10)),
);

test('the twelve newest days stand open, and those before them lie by month, each once and in order', () => {
  const { open, months } = courseMonths(days);
  expect(open).toHaveLength(12);
  expect(months.map(({ month, days: own }) => [month, own.length])).toEqual([
    ['2026-11', 18],
    ['2026-10', 31],
    ['2026-09', 9],
  ]);
  expect([...open, ...months.flatMap((one) => one.days)]).toEqual(days);
});

test('a short line of time stands open as a whole', () => {
  expect(courseMonths(days.slice(0, 12))).toEqual({ open: days.slice(0, 12), months: [] });
  expect(courseMonths([])).toEqual({ open: [], months: [] });
});
