import type { Entry, MorningCheck } from '@surae/casebook';
import { expect, test } from 'vitest';
import {
  leastMornings,
  morningDays,
  morningsOf,
  morningTrend,
  painPoints,
  stretches,
} from '../../../apps/dashboard/src/course/mornings.ts';

const dayAt = (at: number): string => new Date(Date.UTC(2026, 2, 1 + at)).toISOString().slice(0, 10);
const check = (at: number, left: number | null, right: number | null = null): Entry<MorningCheck> => ({
  id: `m${at}`,
  at: '',
  author: 'RN',
  body: { on: dayAt(at), pain: { left, right }, stiffnessMin: null },
});
const of = (...checks: readonly Entry<MorningCheck>[]) => morningsOf(checks, dayAt(100));
const days = (...pains: readonly (number | null)[]) => of(...pains.map((pain, at) => check(at + 80, pain)));

test('a day without an entry, and a pain that was not told, are gaps and no zeros', () => {
  const mornings = of(check(80, 3), check(81, 2), check(84, null, 1), check(85, 4));
  expect(mornings.map(({ on }) => on)).toEqual([80, 81, 84, 85].map(dayAt));
  expect(painPoints(mornings, 'left').map(({ pain }) => pain)).toEqual([3, 2, 4]);
  expect(stretches(painPoints(mornings, 'left')).map((run) => run.map(({ pain }) => pain))).toEqual([[3, 2], [4]]);
  expect(stretches([])).toEqual([]);
});

test('of two entries of a day the one written last counts', () => {
  expect(of(check(80, 3), check(80, 6)).map(({ pain }) => pain.left)).toEqual([6]);
});

test('what is to come and what lies further back than the picture reaches is left out', () => {
  const first = 101 - morningDays;
  expect(of(check(101, 1), check(100, 2), check(first, 3), check(first - 1, 4)).map(({ pain }) => pain.left)).toEqual([
    3, 2,
  ]);
});

test('a direction needs an interval that leaves out zero, and an interval five mornings', () => {
  expect(morningTrend(days(1, 2, 3, 4), 'left')).toMatchObject({ count: leastMornings - 1, moves: 'few-mornings' });
  expect(morningTrend(days(1, 2, 3, 4), 'left').slope).toBeNull();
  expect(morningTrend(days(1, 2, 3, 4, 5, 6), 'left')).toMatchObject({ moves: 'rising' });
  expect(morningTrend(days(1, 2, 3, 4, 5, 6), 'left').slope!.value).toBeCloseTo(7, 10);
  expect(morningTrend(days(6, 5, 4, 3, 2, 1), 'left')).toMatchObject({ moves: 'falling' });
  expect(morningTrend(days(3, 5, 2, 5, 3, 4), 'left').moves).toBe('cannot-tell');
  expect(morningTrend(days(2, 2, 2, 2, 2), 'left').moves).toBe('cannot-tell');
  expect(morningTrend(days(1, 2, 3, 4, 5), 'right')).toMatchObject({ count: 0, moves: 'few-mornings' });
});

test('a gap stretches time: the same pains over more days rise more slowly', () => {
  const near = days(1, 2, 3, 4, 5, 6);
  const far = of(...[1, 2, 3, 4, 5, 6].map((pain, at) => check(60 + 2 * at, pain)));
  expect(morningTrend(far, 'left').slope!.value).toBeCloseTo(morningTrend(near, 'left').slope!.value / 2, 10);
});

test('mornings that are all alike are no proof that nothing moves: what gives the same scores lies in the interval', () => {
  const slope = morningTrend(days(...Array.from({ length: 13 }, () => 2)), 'left').slope!;
  expect(slope.value).toBe(0);
  for (const perWeek of [-0.58, 0.58]) {
    const scores = Array.from({ length: 13 }, (_, day) => Math.round(2 + (perWeek * (day - 6)) / 7));
    expect(new Set(scores)).toEqual(new Set([2]));
    expect(slope.low! < perWeek && perWeek < slope.high!).toBe(true);
  }
});

test('where a direction is told, its interval ends at zero at the latest', () => {
  expect(morningTrend(days(1, 2, 3, 4, 5, 6), 'left').slope).toMatchObject({ low: 0 });
  expect(morningTrend(days(6, 5, 4, 3, 2, 1), 'left').slope).toMatchObject({ high: 0 });
});
