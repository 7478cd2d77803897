import { expect, test } from 'vitest';
import { fuseTiltAndRate, solveTridiagonal } from '../../../packages/analysis/src/movement/pitch-smoother.ts';

test('a tridiagonal system is solved as by hand', () => {
  // 2x - y = 1, -x + 2y - z = 0, -y + 2z = 1 has the solution 1, 1, 1
  const found = solveTridiagonal(
    Float64Array.of(0, -1, -1),
    Float64Array.of(2, 2, 2),
    Float64Array.of(-1, -1, 0),
    Float64Array.of(1, 0, 1),
  );
  found.forEach((value) => {
    expect(Math.abs(value - 1)).toBeLessThan(1e-12);
  });
});

/** Slow oracle: scalar Kalman filter forward and Rauch-Tung-Striebel backward on tilt minus integrated rate. */
function smoothedByKalman(difference: number[], tiltSd: number[], driftVariance: number): number[] {
  const state: number[] = [];
  const variance: number[] = [];
  const foretold: number[] = [];
  difference.forEach((value, i) => {
    // a start from anywhere: a variance beyond all others
    const before = i === 0 ? 1e9 : variance[i - 1] + driftVariance;
    foretold.push(before);
    const gain = before / (before + tiltSd[i] ** 2);
    state.push(i === 0 ? gain * value : state[i - 1] + gain * (value - state[i - 1]));
    variance.push((1 - gain) * before);
  });
  const smooth = [...state];
  for (let i = state.length - 2; i >= 0; i--) {
    smooth[i] = state[i] + (variance[i] / foretold[i + 1]) * (smooth[i + 1] - state[i]);
  }
  return smooth;
}

test('the fused angle is that of the fixed-interval Kalman smoother', () => {
  const count = 200;
  const rate = Float64Array.from({ length: count }, (_, i) => Math.sin(i / 9) + 0.05);
  const tilt = Float64Array.from({ length: count }, (_, i) => -0.09 * Math.cos(i / 9) + 0.01 * Math.sin(i * 1.3));
  const tiltSdRad = Float64Array.from({ length: count }, (_, i) => (i % 7 === 0 ? 0.2 : 0.03));
  const fused = fuseTiltAndRate(tilt, rate, 100, { tiltSdRad, driftSdRad: new Float64Array(count).fill(0.05) });
  let turned = 0;
  const integral = [...rate].map((value, i) => (turned += i > 0 ? (value + rate[i - 1]) / 200 : 0));
  const slow = smoothedByKalman(
    integral.map((value, i) => tilt[i] - value),
    [...tiltSdRad],
    0.05 ** 2 / 100,
  );
  fused.forEach((value, i) => {
    expect(Math.abs(value - integral[i] - slow[i])).toBeLessThan(1e-6);
  });
});
