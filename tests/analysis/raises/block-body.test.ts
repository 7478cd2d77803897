import { blockCounterDefaults } from '@surae/analysis';
import { describe, expect, test } from 'vitest';
import { BodyRise, PlatformAcceleration } from '../../../packages/analysis/src/raises/block-body.ts';
import '../../support/close.ts';

const { body } = blockCounterDefaults;
const rateHz = 100;

function risesOf(acceleration: (timeS: number) => number, lengthS: number): number[] {
  const rise = new BodyRise(body, rateHz);
  rise.settle(acceleration(0));
  return Array.from({ length: lengthS * rateHz }, (_, k) => rise.step(acceleration(k / rateHz)));
}

describe('rise of the body from its acceleration', () => {
  test('a constant acceleration, however large, is no rise', () => {
    const found = risesOf(() => 0.7, 10);
    expect(found).toBeCloseToEach(new Float64Array(found.length), { rtol: 0, atol: 1e-9 });
  });

  test('a steady drift of the acceleration gives next to nothing', () => {
    const found = risesOf((timeS) => 0.01 * timeS, 20).slice(1000);
    expect(found).toBeCloseToEach(new Float64Array(found.length), { rtol: 0, atol: 1e-9 });
  });

  test('raises of 6 cm at one a second come back with their size and their time', () => {
    const w = 2 * Math.PI;
    const found = risesOf((timeS) => 0.03 * w * w * Math.cos(w * timeS), 20);
    const { delayS } = new BodyRise(body, rateHz);
    const from = 1000;
    const truth = Array.from({ length: 500 }, (_, k) => -0.03 * Math.cos(w * ((from + k) / rateHz - delayS)));
    expect(found.slice(from, from + 500)).toBeCloseToEach(truth, { rtol: 0, atol: 0.003 });
  });

  test('the weights are those of a double integral: a slow oracle by Fourier sums agrees', () => {
    // one cell of 1 m/s2 in the middle of nothing: its answer is the kernel, whose transform is -1/w^2 in the pass band
    const rise = new BodyRise(body, rateHz);
    const kernel = [rise.step(1), ...Array.from({ length: 2 * Math.round(rise.delayS * rateHz) }, () => rise.step(0))];
    for (const frequencyHz of [0.8, 1, 1.5, 2]) {
      const w = 2 * Math.PI * frequencyHz;
      const transform = kernel.reduce((sum, weight, k) => sum + weight * Math.cos(w * (k / rateHz - rise.delayS)), 0);
      // cutting the kernel off at its reach bends the lowest part of the band by a tenth
      const dueHigh = (1 - Math.exp(-((w * body.spreadS) ** 2) / 2)) ** 2;
      const dueLow = Math.exp(-((frequencyHz / body.cutoffHz) ** 2) / 2);
      expect([transform * -w * w]).toBeCloseToEach([dueHigh * dueLow], { rtol: 0.12, atol: 0 });
    }
  });
});

describe('acceleration on a platform', () => {
  test('there is none until somebody stands there steadily, then it is (F - W) / M', () => {
    const platform = new PlatformAcceleration(body, rateHz);
    for (let k = 0; k < 100; k++) expect(platform.step(2)).toBeUndefined();
    for (let k = 0; k < 400; k++) platform.step(686.4655);
    expect([platform.weightN!]).toBeCloseToEach([686.4655], { rtol: 0.06, atol: 0 });
    // 70 kg: 20.7 N are 0.296 m/s2
    const weightN = platform.weightN!;
    expect([platform.step(weightN + 20.7)!]).toBeCloseToEach([(20.7 * 9.80665) / weightN], { rtol: 1e-9, atol: 0 });
  });

  test('stepping off ends it, and stepping on again takes the new weight', () => {
    const platform = new PlatformAcceleration(body, rateHz);
    for (let k = 0; k < 400; k++) platform.step(700);
    expect(platform.step(700)).toBeDefined();
    expect(platform.step(5)).toBeUndefined();
    expect(platform.weightN).toBeUndefined();
    for (let k = 0; k < 400; k++) platform.step(900);
    expect([platform.weightN!]).toBeCloseToEach([900], { rtol: 0.06, atol: 0 });
  });
});
