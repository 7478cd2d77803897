import { expect, test } from 'vitest';
import { solveSymmetric } from '../../../../packages/analysis/src/raises/heel/linear-solve.ts';

test('a system of two is solved as by hand', () => {
  // 4x + 2y = 10, 2x + 3y = 9 has the solution 1.5, 2
  const right = Float64Array.of(10, 9);
  expect(solveSymmetric(Float64Array.of(4, 0, 2, 3), [right], 2)).toBe(true);
  expect(Math.abs(right[0] - 1.5)).toBeLessThan(1e-12);
  expect(Math.abs(right[1] - 2)).toBeLessThan(1e-12);
});

test('a matrix that is not positive is refused', () => {
  expect(solveSymmetric(Float64Array.of(1, 0, 2, 1), [Float64Array.of(1, 1)], 2)).toBe(false);
});
