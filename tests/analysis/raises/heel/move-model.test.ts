import { expect, test } from 'vitest';
import {
  moveLevel,
  moveOf,
  moveSize,
  orderTimes,
  parametersOf,
} from '../../../../packages/analysis/src/raises/heel/move-model.ts';
import { minimumJerk, moveShape } from '../../../../packages/analysis/src/raises/heel/move-shape.ts';

const shape = moveShape(minimumJerk);
const p = Float64Array.of(1, 2, 2.5, 3.7, 0.01, 0.1, 0.03);

test('rests before, holds at the top, rests after', () => {
  const slopes = new Float64Array(moveSize);
  expect(moveLevel(p, 0.5, shape, shape, slopes)).toBe(0.01);
  expect(moveLevel(p, 2.2, shape, shape, slopes)).toBe(0.1);
  expect(moveLevel(p, 9, shape, shape, slopes)).toBe(0.03);
  expect(Math.abs(moveLevel(p, 1.5, shape, shape, slopes) - 0.055)).toBeLessThan(1e-9);
});

test('its slopes are those of small differences', () => {
  const slopes = new Float64Array(moveSize);
  const unused = new Float64Array(moveSize);
  for (const timeS of [1.3, 1.77, 2.2, 2.9, 3.4]) {
    moveLevel(p, timeS, shape, shape, slopes);
    for (let a = 0; a < moveSize; a++) {
      const more = Float64Array.from(p);
      const less = Float64Array.from(p);
      more[a] += 1e-4;
      less[a] -= 1e-4;
      const difference =
        (moveLevel(more, timeS, shape, shape, unused) - moveLevel(less, timeS, shape, shape, unused)) / 2e-4;
      expect(Math.abs(difference - slopes[a])).toBeLessThan(2e-3);
    }
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
