import { expect, test } from 'vitest';
import { logNormalCdf } from '../../../../packages/analysis/src/raises/body/log-normal.ts';
import { logAdd } from '../../../../packages/analysis/src/raises/body/log-sum.ts';

test('log 2 + log 3 is log 5, in either order', () => {
  expect(logAdd(Math.log(2), Math.log(3))).toBeCloseTo(Math.log(5), 12);
  expect(logAdd(Math.log(3), Math.log(2))).toBeCloseTo(Math.log(5), 12);
});

test('zero adds nothing, and weights of e to the 5000 do not overflow', () => {
  expect(logAdd(-Infinity, 3)).toBe(3);
  expect(logAdd(3, -Infinity)).toBe(3);
  expect(logAdd(5000, 5000)).toBeCloseTo(5000 + Math.LN2, 9);
  expect(logAdd(5000, 0)).toBe(5000);
});

test('log of the normal distribution: 0.5 at zero, 0.025 at -1.96, and the tail at -8 from tables', () => {
  expect(logNormalCdf(0)).toBeCloseTo(Math.log(0.5), 4);
  expect(logNormalCdf(-1.959963984540054)).toBeCloseTo(Math.log(0.025), 3);
  // Abramowitz and Stegun 1964, table 26.2: Q(8) = 10^-15.20614
  expect(logNormalCdf(-8)).toBeCloseTo(-15.20614 * Math.LN10, 3);
  expect(logNormalCdf(9)).toBe(0);
});
