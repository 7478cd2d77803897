import { expect, test } from 'vitest';
import { heelDefaults } from '../../../../packages/analysis/src/assess/defaults/heel.ts';
import { addShapePrior, origin } from '../../../../packages/analysis/src/raises/heel/shape-prior.ts';

const misfit = (shared: readonly number[]): number =>
  addShapePrior(Float64Array.from(shared), 8, new Float64Array(64), new Float64Array(8), heelDefaults.shape);

test('minimum jerk both ways costs nothing', () => {
  expect(misfit([...origin, ...origin])).toBe(0);
});

test('the way up backwards costs less than the way up again', () => {
  const up = [Math.log(3), Math.log(1.5), 1, 0.5];
  const backwards = [Math.log(1.5), Math.log(3), 1, -0.5];
  expect(misfit([...up, ...backwards])).toBeLessThan(misfit([...up, ...up]) / 3);
});

test('gradient and curvature answer the cost, as differences show', () => {
  const at = Float64Array.of(1, 0.4, 2, 0.3, 0.6, 0.5, 1, 0.2);
  const [matrix, gradient] = [new Float64Array(64), new Float64Array(8)];
  addShapePrior(at, 8, matrix, gradient, heelDefaults.shape);
  const cost = (a: number, by: number): number => misfit([...at].map((value, i) => (i === a ? value + by : value)));
  for (let a = 0; a < 8; a++) {
    expect(gradient[a]).toBeCloseTo(-(cost(a, 1e-4) - cost(a, -1e-4)) / 4e-4, 4);
    expect(matrix[a * 8 + a]).toBeCloseTo((cost(a, 1e-2) - 2 * cost(a, 0) + cost(a, -1e-2)) / 2e-4, 4);
  }
});

test('a later greater stroke on the way up answers an earlier one on the way down', () => {
  const up = [...origin.slice(0, 3), 0.5];
  expect(misfit([...up, ...origin.slice(0, 3), -0.5])).toBeLessThan(misfit([...up, ...origin.slice(0, 3), 0.5]));
});

test('the rule is read: half the spread, four times the misfit', () => {
  const at = [...origin, ...origin].map((value) => value + 0.1);
  const { usualSd, mirroredSd } = heelDefaults.shape;
  const none = { usualSd: [1e9, 1e9, 1e9, 1e9], mirroredSd } as const;
  const by = (rule: typeof heelDefaults.shape): number =>
    addShapePrior(Float64Array.from(at), 8, new Float64Array(64), new Float64Array(8), rule);
  const half = { usualSd: [0.2, 0.2, 1.5, 0.35], mirroredSd } as const;
  const ofUsual = by({ usualSd, mirroredSd }) - by(none);
  expect(by(half) - by(none)).toBeCloseTo(4 * ofUsual, 9);
  expect(ofUsual).toBeGreaterThan(0.1);
});
