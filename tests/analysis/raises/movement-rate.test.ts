import { expect, test } from 'vitest';
import { movementRate, samplesBetween, smoothRuns } from '../../../packages/analysis/src/raises/movement-rate.ts';
import '../../support/close.ts';
import { detectedSet } from '../../support/detected-set.ts';

test('the velocity of a raise of 10 cm in 2 s peaks at pi/20 m/s, its acceleration at 0.4935 m/s2', () => {
  const { motion } = detectedSet({ heightsM: Array<number>(25).fill(0.1) });
  const rate = movementRate(motion, 6);
  const inside = samplesBetween(motion, 10, 40);
  const velocity = rate.velocityMps.slice(inside.fromIndex, inside.toIndex);
  const acceleration = rate.accelerationMps2.slice(inside.fromIndex, inside.toIndex);
  // h = 0.05 (1 - cos pi t): 0.05 pi and 0.05 pi^2; a 6 Hz low-pass takes less than 0.1 % off 0.5 Hz
  expect([Math.max(...velocity)]).toBeCloseToEach([0.05 * Math.PI], { rtol: 0.002, atol: 0 });
  expect([Math.max(...acceleration)]).toBeCloseToEach([0.4935], { rtol: 0.003, atol: 0 });
});

test('nothing is said across a gap, and each side is filtered on its own', () => {
  const samples = new Float64Array(100).fill(0.05);
  samples.fill(Number.NaN, 40, 50);
  const smooth = smoothRuns(samples, 100, 6);
  expect(smooth.slice(40, 50).every((value) => Number.isNaN(value))).toBe(true);
  expect(smooth.slice(0, 40)).toBeCloseToEach(new Float64Array(40).fill(0.05), { rtol: 1e-9, atol: 0 });
  expect(smooth.slice(50)).toBeCloseToEach(new Float64Array(50).fill(0.05), { rtol: 1e-9, atol: 0 });
});

test('a cut-off that the grid cannot hold leaves the samples as they are', () => {
  const samples = Float64Array.from({ length: 20 }, (_, i) => i % 3);
  expect(smoothRuns(samples, 10, 6)).toEqual(samples);
});

test('samples between two instants hold both ends, and none beyond the grid', () => {
  const motion = { startS: 1, sampleRateHz: 10, heightM: new Float64Array(11) };
  expect(samplesBetween(motion, 1.1, 1.3)).toEqual({ fromIndex: 1, toIndex: 4 });
  expect(samplesBetween(motion, 1.11, 1.29)).toEqual({ fromIndex: 2, toIndex: 3 });
  expect(samplesBetween(motion, -5, 99)).toEqual({ fromIndex: 0, toIndex: 11 });
  expect(samplesBetween(motion, 5, 6)).toEqual({ fromIndex: 11, toIndex: 11 });
});
