import { describe, expect, test } from 'vitest';
import { dampedFit } from '../../../packages/analysis/src/efforts/damped-fit.ts';

const steps = Float64Array.of(1e-6, 1e-6);

test('a straight line through three points: the normal equations by hand', () => {
  // y = 1, 3, 4 at x = 0, 1, 2: slope 1.5, intercept 7 / 6; half the sum of squares 1 / 12
  const y = Float64Array.of(1, 3, 4);
  const fit = dampedFit(Float64Array.of(0, 0), steps, ([a, b]) => y.map((value, x) => value - a - b * x))!;
  expect(fit.parameters[0]).toBeCloseTo(7 / 6, 5);
  expect(fit.parameters[1]).toBeCloseTo(1.5, 5);
  expect(fit.cost).toBeCloseTo(1 / 12, 8);
  // curvature: 3; 3, 5
  expect([...fit.curvature].map((value) => Math.round(1e4 * value) / 1e4)).toEqual([3, 0, 3, 5]);
});

describe('curved problems', () => {
  test('a valley that bends (Rosenbrock 1960): the minimum at 1, 1 from this side of it', () => {
    const fit = dampedFit(Float64Array.of(0.5, 0.5), steps, ([a, b]) => Float64Array.of(10 * (b - a * a), 1 - a))!;
    expect(fit.cost).toBeLessThan(0.01);
    expect(Math.abs(fit.parameters[0] - 1)).toBeLessThan(0.1);
  });

  test('a parameter without effect has no fit', () => {
    expect(dampedFit(Float64Array.of(1, 1), steps, ([a]) => Float64Array.of(a - 3, 0))).toBeNull();
  });

  test('the first guess is left as it is', () => {
    const first = Float64Array.of(0, 0);
    dampedFit(first, steps, ([a, b]) => Float64Array.of(a - 1, b - 2));
    expect([...first]).toEqual([0, 0]);
  });
});
