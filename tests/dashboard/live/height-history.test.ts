import { expect, test } from 'vitest';
import { HeightHistory } from '../../../apps/dashboard/src/live/height-history.ts';

test('the last seconds are all there, and what is much older is gone', () => {
  const history = new HeightHistory(4);
  for (let i = 0; i <= 100; i++) history.add(i / 10, i);
  const { timesS, values } = history.line;
  const { fromS, toS } = history.window;
  expect(fromS).toBeCloseTo(6, 9);
  expect(toS).toBeGreaterThan(10);
  expect(timesS[0]).toBeLessThanOrEqual(6);
  expect(timesS[0]).toBeGreaterThanOrEqual(2);
  expect(timesS.at(-1)).toBe(10);
  const seen = [...timesS.keys()].filter((i) => timesS[i] >= 6);
  expect(seen.map((i) => values[i])).toEqual(Array.from({ length: 41 }, (_, i) => 60 + i));
});

test('a time that does not go on is left out', () => {
  const history = new HeightHistory(4);
  history.add(1, 5);
  history.add(1, 6);
  history.add(0.5, 7);
  expect(history.line).toEqual({ timesS: Float64Array.from([1]), values: Float64Array.from([5]) });
});

test('before any height the window is there and the line is empty', () => {
  const history = new HeightHistory(4);
  expect(history.line.timesS).toHaveLength(0);
  expect(history.window.toS - history.window.fromS).toBeCloseTo(4, 5);
});

test('after a hole the line begins anew', () => {
  const history = new HeightHistory(4);
  history.add(1, 5, true);
  history.add(2, 6, true);
  expect(history.line).toEqual({ timesS: Float64Array.of(1, 1.5, 2), values: Float64Array.of(5, NaN, 6) });
});
