import { expect, test } from 'vitest';
import { gridMeans, smoothGrid } from '../../../packages/analysis/src/movement/body-grid.ts';
import '../../support/close.ts';

test('at 1000 Hz each instant of a 100 Hz grid is the mean of the ten samples nearest to it', () => {
  const timesS = Float64Array.from({ length: 1001 }, (_, i) => i / 1000);
  const samples = Float64Array.from({ length: 1001 }, (_, i) => i);
  const means = gridMeans(timesS, samples, { startS: 0, sampleRateHz: 100, count: 100 });
  // around i = 100: samples 95 to 104 lie nearest, their mean is 99.5
  expect(means[10]).toBeCloseTo(99.5, 9);
});

test('at 10 Hz the grid lies on the lines between samples', () => {
  const timesS = Float64Array.of(0, 0.1, 0.2, 0.3);
  const means = gridMeans(timesS, Float64Array.of(0, 1, 0, 2), { startS: 0, sampleRateHz: 20, count: 7 });
  expect(means).toBeCloseToEach([0, 0.5, 1, 0.5, 0, 1, 2], { rtol: 0, atol: 1e-9 });
});

test('uneven times of a slow wave give the same wave on the grid', () => {
  const timesS = Float64Array.from({ length: 900 }, (_, i) => i / 90 + 0.003 * Math.sin(i));
  const samples = timesS.map((t) => Math.sin(2 * Math.PI * 0.5 * t));
  const { grid, values } = smoothGrid(timesS, [samples], 100, 7);
  const middle = values[0].subarray(100, 800);
  const expected = middle.map((_, i) => Math.sin(2 * Math.PI * 0.5 * (grid.startS + (i + 100) / 100)));
  expect(middle).toBeCloseToEach(expected, { rtol: 0, atol: 2e-3 });
});
