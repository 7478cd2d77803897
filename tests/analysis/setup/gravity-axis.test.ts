import { expect, test } from 'vitest';
import { setupDefaults } from '../../../packages/analysis/src/assess/defaults/setup.ts';
import { gravityAxis } from '../../../packages/analysis/src/setup/gravity-axis.ts';
import { openNumbers, vectorOnGrid } from '../../support/open-recordings.ts';
import { stillRun } from '../../support/still-run.ts';

const rule = setupDefaults.guess;
const vector = (x: number, y: number, z: number) =>
  [
    stillRun({ seconds: 2, level: x, noise: 0.05, seed: 1 }).samples,
    stillRun({ seconds: 2, level: y, noise: 0.05, seed: 2 }).samples,
    stillRun({ seconds: 2, level: z, noise: 0.05, seed: 3 }).samples,
  ] as const;

test('each of the six ways a sensor can lie is told, without a question', () => {
  const found = [
    gravityAxis(vector(9.81, 0, 0), rule),
    gravityAxis(vector(-9.81, 0, 0), rule),
    gravityAxis(vector(0, 9.81, 0), rule),
    gravityAxis(vector(0, -9.81, 0), rule),
    gravityAxis(vector(0, 0, 9.81), rule),
    gravityAxis(vector(0, 0, -9.81), rule),
  ];
  expect(found.map(({ answer }) => answer)).toEqual(['x+', 'x-', 'y+', 'y-', 'z+', 'z-']);
  expect(found.every(({ asks }) => !asks)).toBe(true);
  expect(found[0].evidence.code).toBe('gravity-along');
});

test('between two axes it asks, and offers those two', () => {
  const found = gravityAxis(vector(6.94, 0, 6.92), rule);
  expect([found.asks, found.evidence.code]).toEqual([true, 'gravity-between']);
  expect(found.likely.map(({ answer }) => answer).sort()).toEqual(['x+', 'z+']);
});

test('without gravity there is no axis', () => {
  const zeros = new Float64Array(10);
  expect(gravityAxis([zeros, zeros, zeros], rule)).toMatchObject({ answer: null, up: null });
});

test('an open recording that lies still for its first 4 s: up as the cameras saw it, to 2 degrees', () => {
  const rateHz = 100;
  const acceleration = vectorOnGrid('orientation-optical/rotation-imu.csv', 'acceleration', rateHz).map((axis) =>
    axis.slice(0, 4 * rateHz),
  );
  const { up, asks, answer } = gravityAxis([acceleration[0], acceleration[1], acceleration[2]], rule);
  const q = ['q_w', 'q_x', 'q_y', 'q_z'].map((name) => openNumbers('orientation-optical/rotation-optical.csv', name));
  const [w, x, y, z] = q.map((column) => column[20]);
  // third row of the rotation from sensor to earth: the earth's up in the axes of the sensor
  const seen = [2 * (x * z - w * y), 2 * (y * z + w * x), 1 - 2 * (x * x + y * y)];
  const cosine = seen.reduce((sum, value, i) => sum + value * up![i], 0);
  expect(Math.acos(Math.min(1, cosine))).toBeLessThan((2 * Math.PI) / 180);
  const greatest = seen.reduce((best, value, i) => (Math.abs(value) > Math.abs(seen[best]) ? i : best), 0);
  expect([answer, asks]).toEqual([`${'xyz'[greatest]}${seen[greatest] > 0 ? '+' : '-'}`, false]);
});
