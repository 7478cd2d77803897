import { expect, test } from 'vitest';
import {
  EACH,
  type MovedRepetition,
  setAcceleration,
} from '../../../../packages/analysis/src/raises/body/set-moves.ts';

const shape = { ends: 2, tilt: -0.3, fallTilt: -0.1, middle: 0.4 };
const repetitions: MovedRepetition[] = [0, 1, 2].map((k) => ({
  startS: 0.513 + 2.1 * k,
  logRise: Math.log(0.8),
  holdS: 0.13,
  logFall: Math.log(0.77),
  topM: 0.05,
  bottomM: 0.004 * k,
  joined: k < 2,
}));

function cells(coefficients: readonly number[], absent: readonly number[] = []) {
  const present = new Uint8Array(160).fill(1);
  for (const cell of absent) present[cell] = 0;
  return { startS: 0, rateHz: 20, coefficients: Float64Array.from(coefficients), present };
}

test('the acceleration, summed twice, goes to the top and to the bottoms', () => {
  const { model } = setAcceleration(repetitions, shape, cells([]), false);
  let [speed, way] = [0, 0];
  const ways = Array.from(model, (value) => {
    way += speed / 20 + value / 800;
    speed += value / 20;
    return way;
  });
  const at = (timeS: number): number => ways[Math.round(timeS * 20)];
  expect(at(1.4)).toBeCloseTo(0.05, 3);
  expect(at(2.4)).toBeCloseTo(0.004, 3);
  expect(at(3.5)).toBeCloseTo(0.05, 3);
  expect(at(4.6)).toBeCloseTo(0.008, 3);
  expect(at(7.5)).toBeCloseTo(0, 3);
});

test('columns are differences of models', () => {
  const grid = cells([0.5, -0.1], [40, 41]);
  const { columns, common } = setAcceleration(repetitions, shape, grid, true);
  const small = 1e-4;
  const differ = (by: (sign: number) => Float64Array): Float64Array => {
    const [high, low] = [by(small), by(-small)];
    return high.map((value, i) => (value - low[i]) / (2 * small));
  };
  const compare = (found: (i: number) => number, wanted: Float64Array): void => {
    const size = Math.max(...wanted.map(Math.abs));
    wanted.forEach((value, i) => {
      expect(Math.abs(found(i) - value)).toBeLessThan(0.03 * size);
    });
  };
  (['startS', 'logRise', 'holdS', 'logFall', 'topM', 'bottomM'] as const).forEach((name, index) => {
    const column = columns.find((one) => one.unknown === EACH + index)!;
    const wanted = differ((step) => {
      const changed = repetitions.map((one, k) => (k === 1 ? { ...one, [name]: one[name] + step } : one));
      return setAcceleration(changed, shape, grid, false).model;
    });
    compare((i) => column.values[i - column.from] ?? 0, wanted);
  });
  (['ends', 'tilt', 'fallTilt', 'middle'] as const).forEach((name, index) => {
    const wanted = differ((step) => {
      const value = name === 'ends' ? shape.ends * Math.exp(step) : shape[name] + step;
      return setAcceleration(repetitions, { ...shape, [name]: value }, grid, false).model;
    });
    compare((i) => common[index][i], wanted);
  });
});

test('cells that hold no data say nothing', () => {
  const { model, columns } = setAcceleration(repetitions, shape, cells([0.5], [14, 15, 16]), true);
  expect(Math.abs(model[14]) + Math.abs(model[15]) + Math.abs(model[16])).toBe(0);
  const first = columns.find((one) => one.unknown === 0)!;
  expect(Math.abs(first.values[15 - first.from])).toBe(0);
  expect(model[13]).not.toBe(0);
});
