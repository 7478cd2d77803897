import { describe, expect, test } from 'vitest';
import { heelDefaults } from '../../../packages/analysis/src/assess/defaults/heel.ts';
import type { VectorSignal } from '../../../packages/analysis/src/movement/orientation.ts';
import { footPitch } from '../../../packages/analysis/src/movement/pitch.ts';

const sampleRateHz = 100;
const count = 1600;
const gravity = 9.80665;
const place = { behindM: 0.12, aboveM: 0.05 };
/** Three seconds of rest, ten raises of 35 degrees in one second each, rest. */
const half = (35 / 2) * (Math.PI / 180);
const phase = (i: number): number => (2 * Math.PI * (i - 300)) / 100;
const moves = (i: number): boolean => i >= 300 && i < 1300;
const tilt = Float64Array.from({ length: count }, (_, i) => (moves(i) ? half * (1 - Math.cos(phase(i))) : 0));
const rate = Float64Array.from({ length: count }, (_, i) => (moves(i) ? half * 2 * Math.PI * Math.sin(phase(i)) : 0));
const bend = Float64Array.from({ length: count }, (_, i) =>
  moves(i) ? half * (2 * Math.PI) ** 2 * Math.cos(phase(i)) : 0,
);
const along = tilt.map((t, i) => gravity * Math.sin(t) - place.behindM * rate[i] ** 2 - place.aboveM * bend[i]);
const up = tilt.map((t, i) => gravity * Math.cos(t) + place.behindM * bend[i] - place.aboveM * rate[i] ** 2);
const zero = new Float64Array(count);
const known = new Float64Array(count).fill(1);

/** Axes of the sensor turned by Euler angles, so that nothing lies along an axis. */
function mounted(signal: VectorSignal, a: number, b: number): VectorSignal {
  const [x, y, z] = signal;
  const first = x.map((value, i) => value * Math.cos(a) - y[i] * Math.sin(a));
  const second = x.map((value, i) => value * Math.sin(a) + y[i] * Math.cos(a));
  return [
    first,
    second.map((value, i) => value * Math.cos(b) - z[i] * Math.sin(b)),
    second.map((value, i) => value * Math.sin(b) + z[i] * Math.cos(b)),
  ];
}

function worstDeg(found: Float64Array): number {
  let worst = 0;
  // the first and last half second belong to the filters
  for (let i = 50; i < count - 50; i++) worst = Math.max(worst, Math.abs(found[i] - tilt[i]));
  return (worst * 180) / Math.PI;
}

describe.each([
  ['as it comes', 0, 0],
  ['turned', 0.8, 2.1],
  ['upside down', 0, Math.PI],
  ['back to front', Math.PI, 0],
  ['on its side', 2.5, -1.6],
  ['aslant', -0.9, 0.7],
])('pitch of a sensor mounted %s', (_, a, b) => {
  const force = mounted([along, zero, up], a, b);
  // heel up turns about the axis y, in the negative sense for x backwards and z up
  const turn = mounted([zero, rate.map((value) => -value), zero], a, b);

  test('follows the foot with a gyroscope', () => {
    const found = footPitch(force, turn, known, sampleRateHz, heelDefaults.pitch)!;
    expect(found.accelerometerOnly).toBe(false);
    expect(worstDeg(found.pitchRad)).toBeLessThan(1.5);
  });

  test('follows the foot without one, and finds the place of the sensor', () => {
    const found = footPitch(force, undefined, known, sampleRateHz, heelDefaults.pitch)!;
    expect(found.accelerometerOnly).toBe(true);
    expect(Math.abs(found.place.behindM - place.behindM)).toBeLessThan(0.02);
    expect(worstDeg(found.pitchRad)).toBeLessThan(1.5);
  });

  test('does not mind which way the gyroscope counts', () => {
    const wrong = turn.map((part) => part.map((value) => -value)) as unknown as VectorSignal;
    expect(worstDeg(footPitch(force, wrong, known, sampleRateHz, heelDefaults.pitch)!.pitchRad)).toBeLessThan(1.5);
  });
});

test('what the turn explains is taken out of the vertical acceleration', () => {
  const found = footPitch([along, zero, up], undefined, known, sampleRateHz, heelDefaults.pitch)!;
  const size = (signal: Float64Array): number =>
    Math.sqrt(signal.reduce((sum, value) => sum + value * value, 0) / count);
  expect(size(found.unexplained)).toBeLessThan(0.3 * size(found.excess));
});

test('a sensor that feels nothing has no pitch', () => {
  expect(footPitch([zero, zero, zero], undefined, known, sampleRateHz, heelDefaults.pitch)).toBeUndefined();
});
