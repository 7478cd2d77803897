import { expect, test } from 'vitest';
import { runsBelow } from '../../../packages/analysis/src/hops/runs.ts';

const times = (count: number) => Float64Array.from({ length: count }, (_, i) => i / 10);
const runs = (values: readonly number[], joinS = 0, gapS = 1, timesS = times(values.length)) =>
  runsBelow(timesS, Float64Array.from(values), 5, joinS, gapS).map(({ from, to }) => [from, to]);

test('runs below a level, ends included', () => {
  expect(runs([1, 9, 1, 1, 9, 9, 1])).toEqual([
    [0, 1],
    [2, 4],
    [6, 7],
  ]);
  expect(runs([9, 9])).toEqual([]);
  expect(runs([5, 4.9])).toEqual([[1, 2]]);
});

test('a short stay above joins, a longer one does not', () => {
  expect(runs([1, 9, 1, 9, 9, 1], 0.21)).toEqual([
    [0, 3],
    [5, 6],
  ]);
});

test('a gap parts a run at once', () => {
  expect(runs([1, 1, 1, 1], 0, 0.3, Float64Array.of(0, 0.1, 0.8, 0.9))).toEqual([
    [0, 2],
    [2, 4],
  ]);
});
