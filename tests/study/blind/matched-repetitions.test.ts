import { expect, test } from 'vitest';
import { matchedRepetitions } from '../../../packages/study/src/blind/matched-repetitions.ts';
import type { ToldTrial } from '../../../packages/study/src/blind/told-counts.ts';

function told(timesS: readonly (number | null)[], differing: Partial<ToldTrial> = {}): ToldTrial {
  const repetitions = timesS.map((atS, at) => ({ repetition: at + 1, atS, verdict: 'yes' }) as const);
  return { count: timesS.length, asShown: false, isWhole: true, repetitions, ...differing };
}

function pairs(first: ToldTrial, second: ToldTrial, withinS = 0.5): readonly (readonly [number, number])[] {
  return matchedRepetitions(first, second, withinS).both.map(([one, other]) => [one.repetition, other.repetition]);
}

test('marks that lie near each other are of one repetition, and the limit itself is near', () => {
  expect(pairs(told([2, 4, 6]), told([2.5, 4.51, 5.9]))).toEqual([
    [1, 1],
    [3, 3],
  ]);
});

test('the two nearest go together, whoever is first', () => {
  const [one, other] = [told([2, 2.6]), told([2.5, 9])];
  expect(pairs(one, other)).toEqual([[2, 1]]);
  expect(pairs(other, one)).toEqual([[1, 2]]);
  const { firstAlone, secondAlone } = matchedRepetitions(one, other, 0.5);
  expect([firstAlone, secondAlone].map((alone) => alone.map(({ repetition }) => repetition))).toEqual([[1], [2]]);
});

test('numbers as shown are matched by number, and a list that is not whole leaves nobody alone', () => {
  const shown = { asShown: true, isWhole: false };
  expect(pairs(told([2, 4], shown), told([9, 4, 6], { asShown: true }))).toEqual([
    [1, 1],
    [2, 2],
  ]);
  const { both, firstAlone, secondAlone } = matchedRepetitions(told([2, 4, 6]), told([4], shown), 0.5);
  expect([both.length, firstAlone.length, secondAlone.length]).toEqual([1, 0, 0]);
});

test('a repetition without a time has no mark beside it', () => {
  expect(pairs(told([2, 4]), told([null, 4], { asShown: true }))).toEqual([[2, 2]]);
});
