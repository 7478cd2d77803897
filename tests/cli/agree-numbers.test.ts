import { expect, test } from 'vitest';
import { decimalsFor, interval, probability } from '../../apps/cli/src/agree-numbers.ts';

test('three digits of a spread, never more than six decimals', () => {
  expect([38.77, 7.56, 0.05, 412.8, 9999, 1e-12].map(decimalsFor)).toEqual([1, 2, 4, 0, 0, 6]);
  expect(decimalsFor(0)).toBe(2);
});

test('an interval, or the words that there is none', () => {
  expect(interval(-2.1176, { low: -22.049, high: 17.814 }, 1)).toBe('−2.1 (−22.0 to 17.8)');
  expect(interval(1, undefined, 2)).toBe('1.00 (no interval)');
});

test('a probability below one in a thousand is not spelled out', () => {
  expect([probability(0.749), probability(1e-9)]).toEqual(['p = 0.749', 'p < 0.001']);
});
