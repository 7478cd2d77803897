import { expect, test } from 'vitest';
import { findBumps } from '../../../../packages/analysis/src/raises/heel/bumps.ts';
import { describeBumps } from '../../../../packages/analysis/src/raises/heel/candidate.ts';

/** One second of rest, a trapezoid of 0.1 m (1 s up, 1 s high, 2 s down), one second of rest. */
const trapezoid = Float64Array.from({ length: 601 }, (_, i) => {
  if (i < 100) return 0;
  if (i < 200) return (i - 100) / 1000;
  if (i < 300) return 0.1;
  return Math.max(0, 0.1 - (i - 300) / 2000);
});

test('ways, crossings and height are those of the trapezoid', () => {
  const [found] = describeBumps(findBumps(trapezoid, 0.01), trapezoid, 0, 100, undefined);
  expect(Math.abs(found.heightM - 0.1)).toBeLessThan(1e-9);
  expect(Math.abs(found.upS - 0.8)).toBeLessThan(0.011);
  expect(Math.abs(found.downS - 1.6)).toBeLessThan(0.011);
  expect(Math.abs(found.highS - 2.5)).toBeLessThan(0.011);
  expect(found.belowM).toBe(0);
  expect(found.unexplained).toBeUndefined();
});

test('a dip below rest beside the bump is seen, and does not lengthen the way up', () => {
  const dipped = Float64Array.from(trapezoid, (value, i) => (i > 500 && i < 540 ? -0.04 : value));
  const [found] = describeBumps(findBumps(dipped, 0.01), dipped, 0, 100, undefined);
  expect(Math.abs(found.belowM - 0.04)).toBeLessThan(1e-9);
  expect(Math.abs(found.downS - 1.6)).toBeLessThan(0.011);
});

test('unexplained acceleration is the median of its size between the crossings of half height', () => {
  const unexplained = Float64Array.from(trapezoid, (_, i) => (i > 150 && i < 400 ? -0.5 : 9));
  const excess = unexplained.map((value) => 2 * value);
  const [found] = describeBumps(findBumps(trapezoid, 0.01), trapezoid, 0, 100, { unexplained, excess });
  expect(found.unexplained).toBe(0.5);
  expect(Math.abs(found.unexplainedShare! - 0.5)).toBeLessThan(1e-9);
});
