import { expect, test } from 'vitest';
import { ownError } from '../../../packages/study/src/compare/own-error.ts';
import type { ArmTrial } from '../../../packages/study/src/compare/person-values.ts';

const trial = (person: string, value: number, cells: Record<string, string> = {}): ArmTrial => ({
  trial: `${person}-${value}.csv`,
  person,
  arm: 'first',
  value,
  isCapped: false,
  cells,
});

const SCALE = { scale: 'difference', level: 0.95 } as const;

test('by hand: repeats of 10, 12 and of 20, 24 have an error of root of (2 + 8) / 2', () => {
  const found = ownError([trial('a', 10), trial('a', 12), trial('b', 20), trial('b', 24), trial('c', 99)], SCALE)!;
  expect([found.sem.value, found.df, found.sets]).toEqual([Math.sqrt(5), 2, 2]);
  // chi-square of 2 degrees of freedom at 2.5 and 97.5 %: 0.0506356 and 7.377759
  expect(found.sem.low).toBeCloseTo(Math.sqrt(10 / 7.377759), 5);
  expect(found.sem.high).toBeCloseTo(Math.sqrt(10 / 0.0506356), 3);
});

test('another visit or another leg is no repeat', () => {
  const legs = [trial('a', 10, { side: 'left' }), trial('a', 12, { side: 'right' }), trial('a', 14, { visit: '2' })];
  expect(ownError(legs, SCALE)).toBeUndefined();
});

test('of ratios it is on the scale of the logarithm: a change of the unit changes nothing', () => {
  const values = [10, 12, 20, 26];
  const of = (unit: number): number =>
    ownError(
      values.map((value, at) => trial(at < 2 ? 'a' : 'b', value * unit)),
      { ...SCALE, scale: 'ratio' },
    )!.sem.value;
  expect(of(1000)).toBeCloseTo(of(1), 12);
});

test('copies are no proof that there is no error', () => {
  expect(ownError([trial('a', 10), trial('a', 10)], SCALE)).toBeUndefined();
});
