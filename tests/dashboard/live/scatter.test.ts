import { expect, test } from 'vitest';
import { scatter } from '../../../apps/dashboard/src/live/scatter.ts';

test('the divisor is one less than the number of values', () => {
  // the squares about the mean of 5 sum to 32
  expect(Math.abs(scatter([2, 4, 4, 4, 5, 5, 7, 9], 2)! - Math.sqrt(32 / 7))).toBeLessThan(1e-12);
});

test('of fewer than are asked for nothing is told', () => {
  expect(scatter([1, 2], 3)).toBeNull();
  expect(scatter([1, 2, 3], 3)).toBe(1);
});
