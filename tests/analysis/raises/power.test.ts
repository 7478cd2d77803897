import { expect, test } from 'vitest';
import { movementRate } from '../../../packages/analysis/src/raises/movement-rate.ts';
import { peakPower, powerTrace } from '../../../packages/analysis/src/raises/power.ts';
import '../../support/close.ts';
import { detectedSet } from '../../support/detected-set.ts';

const G = 9.80665;
const { motion } = detectedSet({ heightsM: Array<number>(10).fill(0.1) });
const rate = movementRate(motion, 6);

/** Greatest of m (g + a) v over one period, sampled finely from the formula of the movement. */
function exactPeak(massKg: number): number {
  let peak = 0;
  for (let t = 0; t < 1; t += 1e-4) {
    const v = 0.05 * Math.PI * Math.sin(Math.PI * t);
    const a = 0.05 * Math.PI ** 2 * Math.cos(Math.PI * t);
    peak = Math.max(peak, massKg * (G + a) * v);
  }
  return peak;
}

test('the peak power of a mass is that of the formula', () => {
  const power = powerTrace(motion, rate, { kind: 'mass', massKg: 70, gravityMps2: G }, 6);
  const peak = peakPower(motion, power, 10, 11);
  expect([peak ?? Number.NaN]).toBeCloseToEach([exactPeak(70)], { rtol: 0.005, atol: 0 });
});

test('a measured force gives the same power as the mass that makes it', () => {
  const forceN = rate.accelerationMps2.map((a) => 70 * (G + a));
  const byForce = powerTrace(motion, rate, { kind: 'force', forceN }, 6);
  const byMass = powerTrace(motion, rate, { kind: 'mass', massKg: 70, gravityMps2: G }, 6);
  expect(byForce).toBeCloseToEach(byMass, { rtol: 1e-9, atol: 1e-9 });
});

test('power with a hole in it has no peak', () => {
  const power = new Float64Array(motion.heightM.length).fill(50);
  power[1050] = Number.NaN;
  expect(peakPower(motion, power, 10, 11)).toBeUndefined();
  expect(peakPower(motion, power, 11, 12)).toBe(50);
  expect(() => peakPower(motion, power, 12, 11)).toThrow('toS');
});
