import { kindOf } from '@surae/casebook';
import { expect, test } from 'vitest';
import { checkOf, givenMornings } from '../../../apps/dashboard/src/home/taken-mornings.ts';

const morning = (day: string, right: number) => ({ day, left: null, right, stiffness: 'under-10' as const });

test('a morning is kept as a check of its day, with the span that was told', () => {
  expect(kindOf('morning-check')!.versions[0].safeParse(checkOf(morning('2026-11-29', 3))).success).toBe(true);
});

test('a new day is new, the same answers are there, other answers and a day to come are asked about', () => {
  const kept = [
    { id: 'a', body: checkOf(morning('2026-11-27', 3)) },
    { id: 'b', body: checkOf(morning('2026-11-28', 3)) },
  ];
  const given = ['2026-12-01', '2026-11-29', '2026-11-28', '2026-11-27'].map((day, at) =>
    morning(day, at === 2 ? 4 : 3),
  );
  expect(
    givenMornings(given, kept, '2026-11-30').map(({ morning: { day }, state, replaces }) => [day, state, replaces]),
  ).toEqual([
    ['2026-11-27', 'same', []],
    ['2026-11-28', 'other', ['b']],
    ['2026-11-29', 'new', []],
    ['2026-12-01', 'future', []],
  ]);
});

test('of one day that was given twice the last answer counts', () => {
  const given = [morning('2026-11-29', 2), morning('2026-11-29', 5)];
  const found = givenMornings(given, [], '2026-11-30');
  expect(found.map(({ morning: { right } }) => right)).toEqual([5]);
});
