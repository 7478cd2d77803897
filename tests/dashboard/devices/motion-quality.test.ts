import { expect, test } from 'vitest';
import { MotionMeasure } from '../../../apps/dashboard/src/devices/motion-quality.ts';

const reading = (z: number) => ({ acceleration: [0, 0, z] as const, turning: null });

test('before there are two readings nothing is measured, and nothing is nought', () => {
  const measure = new MotionMeasure();
  const open = { rateHz: null, longestWaitMs: null, unchangedShare: null, accelerationStep: null, turningStep: null };
  expect(measure.result()).toEqual({ readings: 0, incomplete: 0, statedIntervalMs: null, ...open });
  measure.add(reading(9.8), 1000, 16);
  expect(measure.result()).toEqual({ readings: 1, incomplete: 0, statedIntervalMs: 16, ...open });
});

test('rate, the longest wait and unchanged readings are counted from what came', () => {
  const measure = new MotionMeasure();
  // five readings in 100 ms: four intervals, one of 40 ms; two of the four repeat the one before
  for (const [atMs, z] of [
    [0, 9.8],
    [20, 9.8],
    [40, 9.9],
    [80, 10.1],
    [100, 10.1],
  ]) {
    measure.add(reading(z), atMs, 16);
  }
  measure.leaveOut();
  expect(measure.result()).toMatchObject({
    readings: 5,
    incomplete: 1,
    rateHz: 40,
    longestWaitMs: 40,
    unchangedShare: 0.5,
    turningStep: null,
  });
});

test('steps are found apart for forces and for turning', () => {
  const measure = new MotionMeasure();
  for (let i = 0; i < 10; i += 1) {
    measure.add({ acceleration: [i / 2, 0, 9.5], turning: [0, i / 8, 0] }, 20 * i, null);
  }
  expect(measure.result()).toMatchObject({ accelerationStep: 0.5, turningStep: 0.125, statedIntervalMs: null });
});

test('a long stream keeps what is needed and no more', () => {
  const measure = new MotionMeasure();
  for (let i = 0; i < 20_000; i += 1) measure.add(reading(i % 7), i, 1);
  const { readings, rateHz, accelerationStep } = measure.result();
  expect([readings, rateHz, accelerationStep]).toEqual([20_000, 1000, 1]);
});
