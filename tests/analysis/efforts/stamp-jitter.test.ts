import { expect, test } from 'vitest';
import { stampJitterS } from '../../../packages/analysis/src/efforts/stamp-jitter.ts';
import { madeNoise } from '../../support/made-pull.ts';

test('an even beat has none, gaps or not', () => {
  const timesS = Float64Array.from({ length: 200 }, (_, i) => i / 128 + (i > 100 ? 1 : 0));
  expect(stampJitterS(timesS)).toBe(0);
  expect(stampJitterS(Float64Array.of(0, 1))).toBe(0);
});

test('stamps that scatter by 1 ms', () => {
  const noise = madeNoise(3, 0.001);
  const timesS = Float64Array.from({ length: 5000 }, (_, i) => i / 80 + noise());
  expect(Math.abs(stampJitterS(timesS) - 0.001)).toBeLessThan(1e-4);
});
