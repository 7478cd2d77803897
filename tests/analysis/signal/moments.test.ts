import { expect, test } from 'vitest';
import { mean, rootMeanSquare, standardDeviation, variance } from '../../../packages/analysis/src/signal/moments.ts';
import '../../support/close.ts';

test('mean, variance and root mean square of 2, 4, 4, 4, 5, 5, 7, 9', () => {
  const samples = [2, 4, 4, 4, 5, 5, 7, 9];
  expect(mean(samples)).toBe(5);
  expect(variance(samples)).toBe(32 / 7);
  expect(standardDeviation(samples)).toBe(Math.sqrt(32 / 7));
  expect(rootMeanSquare(samples)).toBe(Math.sqrt(29));
});

test('a large mean costs no digits of the variance', () => {
  // 1e8 is representable, and so are the three steps: the answer is exact
  expect(variance(Float64Array.of(1e8, 1e8 + 1, 1e8 + 2))).toBe(1);
});

test('single values: a mean and a root mean square, no variance', () => {
  expect([mean([-3]), rootMeanSquare([-3])]).toEqual([-3, 3]);
  expect(() => variance([1])).toThrow(expect.objectContaining({ code: 'too-short' }));
});

test('nothing and NaN are refused', () => {
  for (const moment of [mean, variance, standardDeviation, rootMeanSquare]) {
    expect(() => moment([])).toThrow(expect.objectContaining({ code: 'too-short' }));
    expect(() => moment([1, 2, Number.NaN])).toThrow(expect.objectContaining({ code: 'not-finite' }));
  }
});
