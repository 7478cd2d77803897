import { describe, expect, test } from 'vitest';
import {
  shownTilt,
  tiltWithoutLeverArm,
  verticalAcceleration,
} from '../../../packages/analysis/src/movement/lever-arm.ts';

const degree = Math.PI / 180;
const sampleRateHz = 100;

/** A cosine cycle of the given height and length, at rest before and after; with what an accelerometer shows of it. */
function cycles(amplitudeDeg: number, cycleS: number, place: { behindM: number; aboveM: number }) {
  const count = Math.round(cycleS * 6 * sampleRateHz);
  const turn = (2 * Math.PI) / cycleS;
  const half = (amplitudeDeg * degree) / 2;
  const tilt = new Float64Array(count);
  const shown = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const time = i / sampleRateHz;
    const moving = time > cycleS && time < 5 * cycleS ? 1 : 0;
    tilt[i] = moving * half * (1 - Math.cos(turn * time));
    const rate = moving * half * turn * Math.sin(turn * time);
    const bend = moving * half * turn * turn * Math.cos(turn * time);
    shown[i] = shownTilt(tilt[i], rate, bend, place);
  }
  return { tilt, shown };
}

function worst(a: Float64Array, b: Float64Array): number {
  return Math.max(...a.map((value, i) => Math.abs(value - b[i]))) / degree;
}

describe('tilt shown by an accelerometer', () => {
  // Hand calculation: a tangential acceleration r t'' beside gravity turns its direction by atan(r t''/g), at the turning
  // points of a cosine of 35 degrees; heel 0.185 m, instep 0.10 m from the axis.
  test.each([
    [0.185, 4, 0.8],
    [0.185, 2, 3.3],
    [0.185, 1, 12.8],
    [0.1, 4, 0.4],
    [0.1, 2, 1.8],
    [0.1, 1, 7.0],
  ])('at %d m from the axis and a cycle of %d s is wrong by %d degrees', (radiusM, cycleS, error) => {
    const bend = ((35 * degree) / 2) * ((2 * Math.PI) / cycleS) ** 2;
    const shown = shownTilt(0, 0, -bend, { behindM: 0, aboveM: radiusM });
    expect(Math.abs(shown / degree - error)).toBeLessThan(0.055);
  });

  test('is the tilt itself when nothing moves', () => {
    expect(Math.abs(shownTilt(0.4, 0, 0, { behindM: 0.2, aboveM: 0.05 }) - 0.4)).toBeLessThan(1e-15);
  });
});

describe('compensation of the lever arm', () => {
  test.each([
    [0.185, 35, 4],
    [0.185, 35, 2],
    [0.185, 35, 1],
    [0.1, 35, 1],
    [0.185, 28, 0.7],
  ])('at %d m behind, %d degrees in %d s, leaves less than half a degree', (behindM, amplitude, cycleS) => {
    const place = { behindM, aboveM: 0.05 };
    const { tilt, shown } = cycles(amplitude, cycleS, place);
    const found = tiltWithoutLeverArm(shown, sampleRateHz, place, 6);
    expect(worst(found, tilt)).toBeLessThan(0.5);
    expect(worst(found, tilt)).toBeLessThan(0.3 * worst(shown, tilt));
  });

  test('leaves a foot at rest alone', () => {
    const still = new Float64Array(50).fill(0.2);
    expect(worst(tiltWithoutLeverArm(still, 100, { behindM: 0.1, aboveM: 0.05 }, 6), still)).toBeLessThan(1e-9);
  });

  test('damps what is quick and stays bounded in a stride', () => {
    const wild = Float64Array.from({ length: 400 }, (_, i) => (i % 2 === 0 ? 3 : -3));
    const found = tiltWithoutLeverArm(wild, 100, { behindM: 0.2, aboveM: 0.05 }, 6);
    expect(Math.max(...found.map(Math.abs))).toBeLessThan(1.61);
  });

  test('gives two samples back as they are', () => {
    expect([...tiltWithoutLeverArm(Float64Array.of(0.1, 0.2), 100, { behindM: 0.1, aboveM: 0.05 }, 6)]).toEqual([
      0.1, 0.2,
    ]);
  });
});

test('vertical acceleration is the second difference of the height of the sensor', () => {
  // behind 0.1 m and small angles: height 0.1 t, tilt t = 2 s^2 gives 0.1 * 4 = 0.4 m/s2
  const tilt = Float64Array.from({ length: 11 }, (_, i) => 2 * (i / 1000) ** 2);
  const acceleration = verticalAcceleration(tilt, 1000, { behindM: 0.1, aboveM: 0 });
  expect(Math.abs(acceleration[5] - 0.4)).toBeLessThan(1e-3);
  expect(acceleration[0]).toBe(0);
});
