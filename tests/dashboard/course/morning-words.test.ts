import { expect, test } from 'vitest';
import { morningRows, morningSentences } from '../../../apps/dashboard/src/course/morning-words.ts';
import type { Morning } from '../../../apps/dashboard/src/course/mornings.ts';

const mornings = (...pains: readonly number[]): Morning[] =>
  pains.map((left, at) => ({
    day: 2 * at,
    on: new Date(Date.UTC(2026, 2, 1 + 2 * at)).toISOString().slice(0, 10),
    pain: { left, right: null },
    stiffness: at === 0 ? 'none' : null,
  }));

test('a direction is told with its interval, a missing one as not to be told, and gaps are counted', () => {
  const [left, right, gaps, note] = morningSentences(mornings(1, 2, 3, 4, 5, 6));
  expect(left).toBe('Left: pain in the morning rises by 3.5 of 10 a week (95 %: 0.0 to 7.0), over 6 mornings.');
  expect(right).toMatch(/^Right: cannot tell.*; 0 are written down, and 5 are needed\.$/);
  expect(gaps).toBe('6 of 11 mornings since 1 Mar 2026 are written down.');
  expect(note).toMatch(/^The interval takes one morning as independent/);
});

test('bounds of a fall stand in order without a sign, those that hold zero with theirs', () => {
  expect(morningSentences(mornings(6, 5, 4, 3, 2, 1))[0]).toMatch(/^Left: pain in the morning falls by 3\.5 of 10/);
  expect(morningSentences(mornings(3, 5, 2, 5, 3, 4))[0]).toMatch(/^Left: cannot tell .*\(95 %: −\d.* to \+\d/);
});

test('mornings that are all alike are not told to a point', () => {
  expect(morningSentences(mornings(2, 2, 2, 2, 2, 2))[0]).toMatch(
    /^Left: cannot tell .*\(95 %: −\d\.[1-9] to \+\d\.[1-9]\)/,
  );
});

test('nothing is told of no mornings, and few have no interval to speak of', () => {
  expect(morningSentences([])).toEqual([]);
  expect(morningSentences(mornings(1, 2))).toHaveLength(3);
});

test('rows stand the newest first, and what was not told is said to be so', () => {
  expect(morningRows(mornings(3, 4))).toEqual([
    { when: '3 Mar 2026', left: '4', right: 'not told', stiffness: 'not told' },
    { when: '1 Mar 2026', left: '3', right: 'not told', stiffness: 'not at all' },
  ]);
});
