import * as simulation from '@surae/simulation';
import { describe, expect, test } from 'vitest';
import { madeNoise } from '../support/made-pull.ts';
import { likelihoodOf, onsetLimit, posteriorOfFirst } from './modules.ts';

const steady = { unsteadiness: 0, tremor: 0 };
const timesS = Array.from({ length: 400 }, (_, i) => i / 1000);
const kink = (onsetS: number, slope: number): number[] =>
  timesS.map((timeS) => (timeS > onsetS ? slope * (timeS - onsetS) : 0));

describe('the least error of an onset', () => {
  test('a bend of known slope in white noise: sd over slope and the root of the samples behind it', () => {
    const noise = madeNoise(7, 3);
    const samples = kink(0.1, 2000).map((force) => force + noise());
    const probabilityOf = likelihoodOf({ timesS, samples, sd: 3, faults: steady });
    const { mean, sd } = posteriorOfFirst(([onsetS]) => probabilityOf(kink(onsetS, 2000)), [0.1], [0.001], {
      steps: 12_000,
      seed: 5,
    });
    // 3 N / (2000 N/s sqrt(300)) = 0.0866 ms
    expect(Math.abs(sd / 0.0000866 - 1)).toBeLessThan(0.15);
    expect(Math.abs(mean - 0.1)).toBeLessThan(4 * 0.0000866);
  });

  test('with the slope unknown as well: twice that, as least squares say', () => {
    const noise = madeNoise(11, 3);
    const samples = kink(0.1, 2000).map((force) => force + noise());
    const probabilityOf = likelihoodOf({ timesS, samples, sd: 3, faults: steady });
    const { sd } = posteriorOfFirst(([onsetS, slope]) => probabilityOf(kink(onsetS, slope)), [0.1, 2000], [0.001, 10], {
      steps: 20_000,
      seed: 5,
    });
    // intercept and slope of a line over 0.3 s: variance of the crossing 4 times that with a known slope
    expect(Math.abs(sd / (2 * 0.0000866) - 1)).toBeLessThan(0.2);
  });

  test('the probability of unsteady samples is that of their whole covariance, by hand for two', () => {
    const two = [0, 0.3];
    const forces = [0, 100];
    const at = (second: number): number =>
      likelihoodOf({ timesS: two, samples: [1, second], sd: 2, faults: { unsteadiness: 0.03, tremor: 0 } })(forces);
    // second sample: variance 2^2 + (0.03 x 100)^2 = 13; first: 4
    const by = (second: number): number => -0.5 * (1 / 4 + (second - 100) ** 2 / 13) - 0.5 * Math.log(13 / 4);
    for (const second of [100, 104, 90]) expect(at(second)).toBeCloseTo(by(second), 3);
  });

  test('on simulated recordings: soft starts are told worse than bends', () => {
    const limit = onsetLimit({ simulation, level: 'field', sampleRateHz: 200, traces: 2, from: 1001, steps: 500 });
    expect(limit.efforts).toBeGreaterThan(5);
    expect(limit.p95Ms).toBeGreaterThan(0.3);
    expect(limit.p95Ms).toBeLessThan(40);
  });
});
