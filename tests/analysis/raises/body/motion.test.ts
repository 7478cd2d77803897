import { expect, test } from 'vitest';
import type { BodyAcceleration } from '../../../../packages/analysis/src/movement/body-acceleration.ts';
import { bodyMotion } from '../../../../packages/analysis/src/raises/body/motion.ts';
import type { Raise } from '../../../../packages/analysis/src/raises/detection.ts';

const RATE_HZ = 100;
const START_S = 10;

/** A raised cosine of 60 mm from 12 to 14 s in a recording from 10 to 18 s, in which somebody stands from 11 to 17 s. */
const omega = Math.PI;
const body: BodyAcceleration = {
  startS: START_S,
  sampleRateHz: RATE_HZ,
  upward: Float64Array.from({ length: 800 }, (_, i) => {
    const timeS = START_S + i / RATE_HZ;
    return timeS < 12 || timeS > 14 ? 0 : 0.03 * omega ** 2 * Math.cos(omega * (timeS - 12));
  }),
  force: new Float64Array(800).fill(700),
  gaps: [{ fromS: 15, toS: 15.5 }],
  spikes: 0,
  impacts: new Uint8Array(800),
  span: { fromS: 11, toS: 17 },
};

const raise: Raise = {
  startS: 12,
  startUS: 0.02,
  topS: 13,
  topUS: 0.02,
  endS: 14,
  endUS: 0.02,
  highFromS: 12.9,
  highToS: 13.1,
  heightM: 0.06,
  heightUM: 0.003,
  probability: 1,
  longestGapS: 0,
  topInGap: false,
};

const motion = bodyMotion(body, [raise], [{ fromS: 16, toS: 16.5 }], undefined, 0.8);
const at = (timeS: number): number => motion.heightM[Math.round((timeS - START_S) * RATE_HZ)];

test('a repetition goes up to its rise and back to the floor, and between repetitions the floor is 0', () => {
  for (const [timeS, heightM] of [
    [11.5, 0],
    [12, 0],
    [12.5, 0.03],
    [13, 0.06],
    [13.5, 0.03],
    [14, 0],
    [14.5, 0],
  ]) {
    expect(Math.abs(at(timeS) - heightM), `at ${timeS} s`).toBeLessThan(2e-4);
  }
});

test('nothing is said before and after the stance, in a gap, and in other movement', () => {
  expect([10.5, 15.2, 16.2, 17.5].map(at)).toEqual(Array(4).fill(Number.NaN));
  expect([14.9, 15.6, 15.9, 16.6].map(at)).toEqual(Array(4).fill(0));
});

test('where nobody stands nothing is said at all', () => {
  const { heightM } = bodyMotion({ ...body, span: undefined }, [], [], undefined, 0.8);
  expect(heightM.every(Number.isNaN)).toBe(true);
});

test('the force goes with it from a platform, the angle from a trunk', () => {
  expect(motion.forceN).toBe(body.force);
  expect(motion.trunkPitchRad).toBeUndefined();
  const { startS, sampleRateHz, upward, gaps, spikes, impacts, span } = body;
  const flat = new Float64Array(800);
  const axes = [flat, flat, flat.map((_value, i) => (i < 400 ? 9.8 : 4.9 * Math.SQRT2))];
  axes[0] = flat.map((_value, i) => (i < 400 ? 0 : 4.9 * Math.SQRT2));
  const { trunkPitchRad, forceN, accelerationExcess } = bodyMotion(
    { startS, sampleRateHz, upward, gaps, spikes, impacts, span, axes },
    [],
    [],
    { fromS: 10.5, toS: 12 },
    0.8,
  );
  expect(forceN).toBeUndefined();
  expect(accelerationExcess).toBe(body.upward);
  expect(trunkPitchRad![100]).toBeCloseTo(0, 2);
  expect(trunkPitchRad![700]).toBeCloseTo(Math.PI / 4, 2);
});
