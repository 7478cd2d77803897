import { expect, test } from 'vitest';
import { courseDays } from '../../../apps/dashboard/src/course/course-days.ts';
import type { CourseLine } from '../../../apps/dashboard/src/course/course-line.ts';

const line = (id: string, day: string): CourseLine => ({
  id,
  what: 'note',
  day,
  at: `${day}T09:00:00Z`,
  side: null,
  sentences: [],
  logged: null,
  visitId: null,
  isCounted: false,
});

test('lines of a day stand together, and the days without an entry between two are counted', () => {
  const lines = [line('a', '2026-03-09'), line('b', '2026-03-02'), line('c', '2026-03-02'), line('d', '2026-03-01')];
  const days = courseDays(lines, '2026-03-05');
  expect(days.map(({ day, lines: own }) => [day, own.map(({ id }) => id).join('')])).toEqual([
    ['2026-03-09', 'a'],
    ['2026-03-02', 'bc'],
    ['2026-03-01', 'd'],
  ]);
  expect(days.map(({ emptyBelow }) => emptyBelow)).toEqual([6, 0, 0]);
  expect(days.map(({ isToCome }) => isToCome)).toEqual([true, false, false]);
});

test('no line makes no day', () => {
  expect(courseDays([], '2026-03-05')).toEqual([]);
});
