import { expect, test } from 'vitest';
import { solveSideBySide, solveSymmetric } from '../../../../packages/analysis/src/raises/heel/linear-solve.ts';

test('a system of two is solved as by hand', () => {
  // 4x + 2y = 10, 2x + 3y = 9 has the solution 1.5, 2
  const right = Float64Array.of(10, 9);
  expect(solveSymmetric(Float64Array.of(4, 0, 2, 3), [right], 2)).toBe(true);
  expect(Math.abs(right[0] - 1.5)).toBeLessThan(1e-12);
  expect(Math.abs(right[1] - 2)).toBeLessThan(1e-12);
});

test('a matrix that is not positive is refused', () => {
  expect(solveSymmetric(Float64Array.of(1, 0, 2, 1), [Float64Array.of(1, 1)], 2)).toBe(false);
  const right = Float64Array.of(1, 2, 3, 4);
  expect(solveSideBySide(Float64Array.of(1, 0, 2, 1), right, 2)).toBe(false);
  expect(right).toEqual(Float64Array.of(1, 2, 3, 4));
});

test('sides that stand side by side, and rows with room at their end, give the very numbers of one side alone', () => {
  const size = 4;
  const entry = (i: number, j: number): number => (i === j ? 5 + i : Math.sin(i + j));
  const matrix = (stride: number): Float64Array =>
    Float64Array.from({ length: size * stride }, (_, at) =>
      at % stride < size ? entry(Math.floor(at / stride), at % stride) : 99,
    );
  const sides = [0, 1, 2].map((w) => Float64Array.from({ length: size }, (_, i) => Math.cos(3 * w + i)));
  const together = Float64Array.from({ length: 3 * size }, (_, at) => sides[at % 3][Math.floor(at / 3)]);
  expect(solveSideBySide(matrix(6), together, size, 6)).toBe(true);
  expect(solveSymmetric(matrix(size), sides, size)).toBe(true);
  sides.forEach((side, w) => expect(Array.from(side)).toEqual(Array.from(side, (_, i) => together[3 * i + w])));
  const row = (w: number, i: number): number => sides[w].reduce((sum, x, j) => sum + entry(i, j) * x, 0);
  for (let i = 0; i < size; i++) expect(row(1, i)).toBeCloseTo(Math.cos(3 + i), 12);
});
