import { calibrationError, type MassCalibration, massLine } from '@surae/analysis';
import { expect, test } from 'vitest';
import { tQuantile } from '../../../packages/analysis/src/agreement/distributions.ts';
import { setupDefaults } from '../../../packages/analysis/src/assess/defaults/setup.ts';
import { leastSquaresLine } from '../../../packages/analysis/src/signal/line.ts';
import '../../support/close.ts';
import { madeNoise } from '../../support/made-pull.ts';

const g = 9.80665;
const rule = setupDefaults.masses;

function lineOf(massesKg: readonly number[], readings: readonly number[]): MassCalibration {
  const levels = massesKg.map((massKg, i) => ({ massKg, level: readings[i], u: 0.1 }));
  const fit = massLine(levels, g, rule);
  if (fit.kind !== 'calibration') throw new Error(fit.reason);
  return fit;
}

test('an exact line leaves the masses and gravity, and no error of the zero', () => {
  const { relativeU, zeroU, correlation } = calibrationError(lineOf([0, 10, 20], [1, 1 + 20 * g, 1 + 40 * g]), null);
  expect(relativeU).toBeCloseTo(Math.hypot(0.1 / Math.sqrt(3) / 20, 0.0015), 9);
  expect(zeroU).toBeLessThan(1e-9);
  expect(Math.abs(correlation)).toBeLessThan(1e-6);
});

test('GUM (JCGM 100:2008), H.3.3: slope and intercept of the thermometer correlate with -0.930', () => {
  // table H.6, temperature less 20 degrees, from memory
  const table = [
    [1.521, -0.171],
    [2.012, -0.169],
    [2.512, -0.166],
    [3.003, -0.159],
    [3.507, -0.164],
    [3.999, -0.165],
    [4.513, -0.156],
    [5.002, -0.157],
    [5.503, -0.159],
    [6.01, -0.161],
    [6.511, -0.16],
  ];
  const line = leastSquaresLine(
    table.map(([x]) => x),
    table.map(([, y]) => y),
  );
  const reach = tQuantile(0.975, 9) * line.slopeU!;
  const made: MassCalibration = {
    ...lineOf([0, 10, 20], [0, 10 * g, 20 * g]),
    slope: line.slope,
    slopeU: line.slopeU!,
    offset: line.intercept,
    offsetU: line.interceptU!,
    residualSd: line.residualSd!,
    degrees: 9,
    slopeLow: line.slope - reach,
    slopeHigh: line.slope + reach,
  };
  expect(calibrationError(made, null).correlation.toFixed(3)).toBe('-0.930');
});

test('lines through the same masses, a thousand times: forces scatter as said, near and beyond the greatest mass', () => {
  const massesKg = [0, 5, 10, 20, 0];
  const normal = madeNoise(7, 0.2);
  const draws = Array.from({ length: 2000 }, () =>
    lineOf(
      massesKg,
      massesKg.map((kg) => 3 + 1.02 * kg * g + normal()),
    ),
  );
  for (const forceN of [0, 80, 1200]) {
    const errors = draws.map(({ slope, offset }) => (3 + 1.02 * forceN - offset) / slope - forceN);
    const scatter = Math.sqrt(errors.reduce((sum, one) => sum + one ** 2, 0) / errors.length);
    const squares = draws.map((line) => {
      const { relativeU, zeroU, correlation } = calibrationError(line, null);
      // masses and gravity did not vary in the draws: what they add is taken off again
      const fixed = Math.hypot(0.1 / Math.sqrt(3) / 20, 0.0015);
      const ofSlope = forceN * Math.sqrt(relativeU ** 2 - fixed ** 2);
      // the covariance is that of the scatter, whatever masses and gravity add
      return ofSlope ** 2 + zeroU ** 2 + 2 * correlation * forceN * relativeU * zeroU;
    });
    const said = Math.sqrt(squares.reduce((sum, one) => sum + one, 0) / squares.length);
    expect(Math.abs(said / scatter - 1), String(forceN)).toBeLessThan(0.06);
  }
});

test('a zero that moved since counts in full, and takes no part in what slope and zero share', () => {
  const line = lineOf([0, 10, 20, 0], [1.1, 1 + 20 * g, 0.9 + 40 * g, 1]);
  const [before, since] = [calibrationError(line, null), calibrationError(line, line.offset + 6)];
  expect(since.zeroU).toBeCloseTo(Math.hypot(before.zeroU, 6 / line.slope), 12);
  expect(since.correlation * since.zeroU).toBeCloseTo(before.correlation * before.zeroU, 12);
  expect(since.relativeU).toBe(before.relativeU);
});
