import { expect, test } from 'vitest';
import { solveSymmetric } from '../../../../packages/analysis/src/raises/heel/linear-solve.ts';
import {
  moveLevels,
  moveOf,
  moveSize,
  moveSlopes,
  orderTimes,
  parametersOf,
  tieHold,
} from '../../../../packages/analysis/src/raises/heel/move-model.ts';
import { minimumJerk, moveShape } from '../../../../packages/analysis/src/raises/heel/move-shape.ts';

const shape = moveShape(minimumJerk);
const p = Float64Array.of(1, 2, 2.5, 3.7, 0.01, 0.1, 0.03);

const timesS = Float64Array.of(0.5, 1, 1.3, 1.5, 1.77, 2, 2.2, 2.5, 2.9, 3.4, 3.7, 9);

function levelsOf(q: Float64Array, up = shape, down = shape): Float64Array {
  const levels = new Float64Array(timesS.length);
  moveLevels(q, timesS, up, down, levels);
  return levels;
}

test('rests before, holds at the top, rests after', () => {
  const levels = levelsOf(p);
  expect([0, 1].map((i) => levels[i])).toEqual([0.01, 0.01]);
  expect([5, 6, 7].map((i) => levels[i])).toEqual([0.1, 0.1, 0.1]);
  expect([10, 11].map((i) => levels[i])).toEqual([0.03, 0.03]);
  expect(Math.abs(levels[3] - 0.055)).toBeLessThan(1e-9);
});

test('either way has its own shape', () => {
  const soft = moveShape({ ...minimumJerk, start: 4 });
  const [usual, up, down] = [levelsOf(p), levelsOf(p, soft), levelsOf(p, shape, soft)];
  expect(usual[2] - up[2]).toBeGreaterThan(0.001);
  expect(down[8] - usual[8]).toBeGreaterThan(0.001);
  expect([up[8], down[2]]).toEqual([usual[8], usual[2]]);
});

test('its slopes are those of small differences, and nothing depends on a way before it', () => {
  const slopes = new Float64Array(moveSize * timesS.length).fill(7);
  expect(moveSlopes(p, timesS, shape, shape, slopes)).toEqual({ up: 2, hold: 5, down: 8, rest: 10 });
  for (let a = 0; a < moveSize; a++) {
    const more = Float64Array.from(p);
    const less = Float64Array.from(p);
    more[a] += 1e-4;
    less[a] -= 1e-4;
    const [above, below] = [levelsOf(more), levelsOf(less)];
    timesS.forEach((_, i) => {
      const slope = slopes[a * timesS.length + i];
      expect(Math.abs((above[i] - below[i]) / 2e-4 - slope)).toBeLessThan(2e-3);
      if (i < (a === 2 || a === 3 || a === 6 ? 8 : 2)) expect(slope).toBe(a === 4 ? 1 : 0);
    });
  }
});

test('times are put in order', () => {
  const mixed = Float64Array.of(2, 2.01, 1.5, 1.6, 0, 0, 0);
  orderTimes(mixed, 0.1);
  expect(mixed[1]).toBe(mixed[2]);
  expect(mixed[1] - mixed[0]).toBeGreaterThanOrEqual(0.1 - 1e-12);
  expect(mixed[3] - mixed[2]).toBeGreaterThanOrEqual(0.1 - 1e-12);
});

test('a move and its parameters say the same, in the order in which the level is worked out', () => {
  const move = moveOf(p);
  expect(move).toEqual({ startS: 1, highFromS: 2, highToS: 2.5, endS: 3.7, before: 0.01, top: 0.1, after: 0.03 });
  expect(parametersOf(move)).toEqual(p);
});

test('a tie closes the hold, and all else goes where the equations want it', () => {
  const size = moveSize;
  const matrix = new Float64Array(size * size);
  for (let a = 0; a < size; a++) {
    for (let b = 0; b <= a; b++) matrix[a * size + b] = a === b ? 4 + a : 0.3;
  }
  const gradient = Float64Array.from({ length: size }, (_, a) => 1 + a);
  const tied = matrix.slice();
  const step = gradient.slice();
  tieHold(p, tied, size, step);
  solveSymmetric(tied, [step], size);
  expect(Math.abs(p[1] + step[1] - p[2] - step[2])).toBeLessThan(1e-6);
  // what is left over is nothing but what the tie takes, the same either way
  const left = gradient.map((value, a) => {
    const row = step.map((one, b) => one * matrix[Math.max(a, b) * size + Math.min(a, b)]);
    return value - row.reduce((sum, one) => sum + one, 0);
  });
  for (const a of [0, 3, 4, 5, 6]) expect(Math.abs(left[a])).toBeLessThan(1e-5);
  expect(Math.abs(left[1] + left[2])).toBeLessThan(1e-5);
  expect(Math.abs(left[1])).toBeGreaterThan(0.1);
});
