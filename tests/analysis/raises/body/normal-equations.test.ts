import { expect, test } from 'vitest';
import { NormalEquations } from '../../../../packages/analysis/src/raises/body/normal-equations.ts';

/** Solution of a full system by elimination, the slow way. */
function solveSlowly(matrix: number[][], right: readonly number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i]]);
  const n = rows.length;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      if (j === i) continue;
      const share = rows[j][i] / rows[i][i];
      for (let k = i; k <= n; k++) rows[j][k] -= share * rows[i][k];
    }
  }
  return rows.map((row, i) => row[n] / row[i]);
}

/** Nine unknowns in a row, neighbours joined, and two that concern all. */
function example(): { equations: NormalEquations; matrix: number[][]; right: number[] } {
  const n = 11;
  const equations = new NormalEquations(n, 2, 2);
  const matrix = Array.from({ length: n }, () => new Array<number>(n).fill(0));
  const right = new Array<number>(n).fill(0);
  const say = (unknowns: number[], factors: number[], value: number): void => {
    equations.addEquation(unknowns, factors, value);
    unknowns.forEach((a, i) => {
      right[a] += factors[i] * value;
      unknowns.forEach((b, j) => {
        matrix[a][b] += factors[i] * factors[j];
      });
    });
  };
  for (let i = 0; i < 9; i++) {
    say([i, 9, 10], [1, -0.7, 0.1 * i], Math.sin(i));
    if (i < 7) say([i + 2, i, i + 1], [0.8, -0.3, 0.5], Math.cos(3 * i));
  }
  say([9], [0.4], 1);
  say([10], [0.9], -2);
  return { equations, matrix, right };
}

test('two equations that anyone can solve', () => {
  const equations = new NormalEquations(2, 1, 0);
  equations.addEquation([0, 1], [1, 1], 5);
  equations.addEquation([0, 1], [1, -1], 1);
  const [x, y] = equations.factor(0)!.solve(equations.right);
  expect(x).toBeCloseTo(3, 12);
  expect(y).toBeCloseTo(2, 12);
});

test('the envelope gives what the full matrix gives', () => {
  const { equations, matrix, right } = example();
  const slow = solveSlowly(matrix, right);
  equations
    .factor(0)!
    .solve(equations.right)
    .forEach((value, i) => {
      expect(value).toBeCloseTo(slow[i], 9);
    });
});

test('the variance of a sum is that of the inverse matrix', () => {
  const { equations, matrix } = example();
  const weights = [0, 0, 1, 0.5, 0, 0, 0, 0, 0, -2, 0];
  const solved = solveSlowly(matrix, weights);
  const variance = weights.reduce((sum, weight, i) => sum + weight * solved[i], 0);
  expect(equations.factor(0)!.varianceOf([2, 3, 9], [1, 0.5, -2])).toBeCloseTo(variance, 9);
});

test('damping shortens the step, and a matrix that is not positive has no factor', () => {
  const { equations } = example();
  const length = (damping: number): number => Math.hypot(...equations.factor(damping)!.solve(equations.right));
  expect(length(10)).toBeLessThan(0.5 * length(0));
  const empty = new NormalEquations(2, 1, 0);
  empty.addEquation([0, 1], [1, 1], 1);
  expect(empty.factor(0)).toBeUndefined();
});
