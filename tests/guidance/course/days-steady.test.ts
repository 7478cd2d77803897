import { daysSteady, type MorningTold } from '@surae/guidance';
import { expect, test } from 'vitest';

const today = 100;

/** Mornings of pain 1 over fifty days, but for those that are told otherwise by how many days ago they were. */
function mornings(others: Readonly<Record<number, number | null>> = {}): ReadonlyMap<number, MorningTold> {
  return new Map(
    Array.from({ length: 50 }, (_, ago) => [
      today - ago,
      { day: '', pain: ago in others ? others[ago] : 1, stiffnessMin: null },
    ]),
  );
}

const of = (
  others: Readonly<Record<number, number | null>>,
  pains: readonly (readonly [number, number | null])[] = [],
) => daysSteady(mornings(others), new Map(pains.map(([ago, pain]) => [today - ago, pain])), today, 5);

test('a morning over its usual level ends the steady days, and one point over it does not', () => {
  expect(of({ 10: 3 })).toEqual({ low: 10, high: 10 });
  expect(of({ 10: 2, 20: 4 })).toEqual({ low: 20, high: 20 });
});

test('a session over its limit ends them, and one at the limit does not', () => {
  expect(of({ 30: 9 }, [[4, 6]])).toEqual({ low: 4, high: 4 });
  expect(of({ 30: 9 }, [[4, 5]])).toEqual({ low: 30, high: 30 });
});

test('a morning that was not told, or pain that was not, may have been either: it ends what is known alone', () => {
  expect(of({ 3: null, 12: 5 })).toEqual({ low: 3, high: 12 });
  expect(of({ 12: 5 }, [[6, null]])).toEqual({ low: 6, high: 12 });
});

test('the morning of today need not be told yet', () => {
  expect(of({ 0: null, 15: 5 })).toEqual({ low: 14, high: 15 });
});

test('before the log nothing is known, and no end of it is', () => {
  // the first three mornings have no usual level before them
  expect(of({})).toEqual({ low: 47, high: Number.POSITIVE_INFINITY });
  expect(daysSteady(new Map(), new Map(), today, 5)).toEqual({ low: 0, high: Number.POSITIVE_INFINITY });
});
