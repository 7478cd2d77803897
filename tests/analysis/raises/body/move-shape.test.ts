import { expect, test } from 'vitest';
import { SPEED_STEPS, speedAt, speedTable, tableAt } from '../../../../packages/analysis/src/raises/body/move-shape.ts';

const shape = { ends: 1.7, tilt: -0.4, middle: 0.8 };

test('gentle ends of 2 without tilt are the minimum-jerk move, 30 u^2 (1 - u)^2', () => {
  const table = speedTable({ ends: 2, tilt: 0, middle: 0 }, false);
  for (const u of [0.1, 0.313, 0.5, 0.77]) expect(speedAt(table, u)).toBeCloseTo(30 * u * u * (1 - u) * (1 - u), 3);
});

test('ends of 1 are a parabola, 6 u (1 - u)', () => {
  const table = speedTable({ ends: 1, tilt: 0, middle: 0 }, false);
  for (const u of [0.2, 0.5, 0.81]) expect(speedAt(table, u)).toBeCloseTo(6 * u * (1 - u), 2);
});

test('a move of any shape goes its whole way', () => {
  for (const middle of [-1.5, 0, 4]) {
    const { speed } = speedTable({ ...shape, middle }, false);
    expect(speed.reduce((sum, value) => sum + value, 0) / SPEED_STEPS).toBeCloseTo(1, 9);
  }
});

test('the way down is the way up in the mirror', () => {
  const [up, down] = [speedTable(shape, false), speedTable(shape, true)];
  for (let i = 0; i <= SPEED_STEPS; i++) expect(down.speed[i]).toBeCloseTo(up.speed[SPEED_STEPS - i], 9);
});

test('a tilt below zero is quick near the bottom, a middle above zero slows the middle', () => {
  const table = speedTable({ ends: 2, tilt: -0.5, middle: 0 }, false);
  expect(speedAt(table, 0.3)).toBeGreaterThan(1.2 * speedAt(table, 0.7));
  const two = speedTable({ ends: 3, tilt: 0, middle: 4.5 }, false);
  expect(speedAt(two, 0.5)).toBeLessThan(speedAt(two, 0.25));
});

test('outside the move nothing moves', () => {
  const table = speedTable(shape, false);
  for (const share of [-0.2, 0, 1, 1.3]) {
    expect(speedAt(table, share)).toBe(0);
    expect(tableAt(table.byTilt, share)).toBe(0);
  }
});

test('the tables by the shape are differences of speeds', () => {
  const small = 1e-5;
  const table = speedTable(shape, true);
  const by = (high: typeof shape, low: typeof shape): Float64Array => {
    const [a, b] = [speedTable(high, true).speed, speedTable(low, true).speed];
    return a.map((value, i) => (value - b[i]) / (2 * small));
  };
  const ends = by({ ...shape, ends: 1.7 * Math.exp(small) }, { ...shape, ends: 1.7 * Math.exp(-small) });
  const tilt = by({ ...shape, tilt: -0.4 + small }, { ...shape, tilt: -0.4 - small });
  const middle = by({ ...shape, middle: 0.8 + small }, { ...shape, middle: 0.8 - small });
  for (let i = 0; i <= SPEED_STEPS; i += 7) {
    expect(table.byEnds[i]).toBeCloseTo(ends[i], 5);
    expect(table.byTilt[i]).toBeCloseTo(tilt[i], 5);
    expect(table.byMiddle[i]).toBeCloseTo(middle[i], 5);
  }
});
