import { expect, test } from 'vitest';
import { ankleRise, liftingWork, positiveWork } from '../../../packages/analysis/src/raises/work.ts';

const G = 9.80665;
const degrees = Math.PI / 180;
// a foot of 26 cm: heel 18.6 cm, ankle 13 cm behind and 7 cm above the metatarsal heads
const foot = {
  heelLeverM: 0.186,
  ankleLeverM: Math.hypot(0.13, 0.07),
  ankleAngleRad: Math.atan2(0.07, 0.13),
  restElevationRad: 0,
};

test('eighty kilograms lifted by ten centimetres are 78.453 J, and 1961.33 J in twenty-five repetitions', () => {
  const work = liftingWork(80, 0, { value: 0.1, u: 0 }, G);
  expect(work.value).toBeCloseTo(78.4532, 9);
  expect(25 * work.value).toBeCloseTo(1961.33, 9);
});

test('192 cm and 73 kg give the 1374 J of the published medians', () => {
  // Sleeswijk Visser (2025), Braz J Phys Ther 29:101188: 192 cm, 1374 J
  expect(Math.abs(liftingWork(73, 0, { value: 1.92, u: 0 }, G).value - 1374)).toBeLessThan(1);
});

test('the uncertainty of work joins height and mass', () => {
  const work = liftingWork(80, 0.4, { value: 0.1, u: 0.003 }, G);
  expect(work.u).toBeCloseTo(Math.sqrt((80 * G * 0.003) ** 2 + (G * 0.1 * 0.4) ** 2), 12);
});

test('a massless body is refused', () => {
  expect(() => liftingWork(0, 0, { value: 0.1, u: 0 }, G)).toThrow('massKg');
});

test.each([
  [15, 0.048, 0.031],
  [25, 0.079, 0.048],
  [35, 0.107, 0.062],
  [45, 0.131, 0.071],
])('at %i degrees the heel is %f m and the ankle %f m up', (angle, heelM, ankleM) => {
  const height = foot.heelLeverM * Math.sin(angle * degrees);
  expect(Math.abs(height - heelM)).toBeLessThan(0.0006);
  expect(Math.abs((ankleRise({ value: height, u: 0 }, foot, 0)?.value ?? 0) - ankleM)).toBeLessThan(0.0006);
});

test('the uncertainty of the ankle is that of the heel through the lever, and the model', () => {
  const at = (value: number) => ankleRise({ value, u: 0 }, foot, 0)?.value ?? Number.NaN;
  const slope = (at(0.1001) - at(0.0999)) / 0.0002;
  expect(ankleRise({ value: 0.1, u: 0.002 }, foot, 0)?.u).toBeCloseTo(0.002 * slope, 8);
  expect(ankleRise({ value: 0.1, u: 0 }, foot, 0.05)?.u).toBeCloseTo(0.05 * at(0.1), 12);
});

test('a heel higher than its lever has no ankle rise', () => {
  expect(ankleRise({ value: 0.19, u: 0 }, foot, 0)).toBeUndefined();
});

test('a constant force along a steady rise does force times way, and the way down does nothing', () => {
  const force = new Float64Array(101).fill(700);
  const up = new Float64Array(101).fill(0.1);
  expect(positiveWork(force, up, 0, 101, 100)).toBeCloseTo(70, 9);
  expect(
    positiveWork(
      force,
      up.map((v) => -v),
      0,
      101,
      100,
    ),
  ).toBe(0);
});

test('a missing sample leaves the work unknown', () => {
  const force = new Float64Array(10).fill(700);
  const velocity = new Float64Array(10).fill(0.1);
  velocity[4] = Number.NaN;
  expect(positiveWork(force, velocity, 0, 10, 100)).toBeUndefined();
  expect(positiveWork(force, velocity, 3, 4, 100)).toBeUndefined();
});
