import { expect, test } from 'vitest';
import { minimumJerk, moveShape, readShape } from '../../../../packages/analysis/src/raises/heel/move-shape.ts';

test('minimum jerk goes its way as the fifth-order polynomial', () => {
  const shape = moveShape(minimumJerk);
  for (const u of [0, 0.1, 0.25, 0.5, 0.8, 1]) {
    expect(Math.abs(readShape(shape.way, u) - u ** 3 * (10 - 15 * u + 6 * u * u))).toBeLessThan(2e-4);
    expect(Math.abs(readShape(shape.speed, u) - 30 * (u * (1 - u)) ** 2)).toBeLessThan(2e-3);
  }
});

test('every shape runs from 0 to 1 without turning back', () => {
  for (const start of [0.7, 2, 5]) {
    for (const end of [0.7, 2, 5]) {
      for (const spread of [-0.9, 0, 7]) {
        const { way } = moveShape({ start, end, spread, tilt: 0.5 });
        expect(way[0]).toBe(0);
        expect(Math.abs(way[way.length - 1] - 1)).toBeLessThan(1e-12);
        way.forEach((value, i) => {
          if (i > 0) expect(value).toBeGreaterThanOrEqual(way[i - 1]);
        });
      }
    }
  }
});

test('a great spread makes two strokes with a slower moment between', () => {
  const { speed } = moveShape({ start: 2.7, end: 2.7, spread: 8, tilt: 0 });
  expect(readShape(speed, 0.5)).toBeLessThan(0.8 * readShape(speed, 0.25));
});
