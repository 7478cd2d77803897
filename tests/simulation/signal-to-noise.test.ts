import { describe, expect, test } from 'vitest';
import { Random } from '../../packages/simulation/src/random.ts';
import { signalToNoise } from '../../packages/simulation/src/signal-to-noise.ts';

describe('signal-to-noise ratio of a known repetition', () => {
  // one whole sine of acceleration: energy = A2 T / 2, so SNR2 = 2 E / N with one-sided density N
  test('in white noise it is the root of twice the energy over the density', () => {
    const rateHz = 50;
    const sine = Float64Array.from({ length: 100 }, (_, i) => 0.3 * Math.sin((Math.PI * i) / 50));
    const expected = Math.sqrt((2 * 0.09 * 2) / 2 / 0.0025);
    expect(Math.abs(signalToNoise(sine, rateHz, () => 0.0025) / expected - 1)).toBeLessThan(0.003);
  });

  test('is what a matched filter reaches on drawn white noise', () => {
    const rateHz = 50;
    const sine = Float64Array.from({ length: 100 }, (_, i) => 0.3 * Math.sin((Math.PI * i) / 50));
    const density = 0.01;
    const sd = Math.sqrt((density * rateHz) / 2);
    const random = new Random(11, 0);
    const squares = sine.reduce((sum, value) => sum + value * value, 0);
    let variance = 0;
    const draws = 4000;
    for (let k = 0; k < draws; k++) {
      let match = 0;
      for (const value of sine) match += value * sd * random.gaussian();
      variance += (match / squares) ** 2 / draws; // relative error of the fitted size
    }
    const reached = 1 / Math.sqrt(variance);
    expect(Math.abs(reached / signalToNoise(sine, rateHz, () => density) - 1)).toBeLessThan(0.05);
  });

  test('grows with the size and falls with the root of the noise', () => {
    const one = Float64Array.from({ length: 60 }, (_, i) => Math.sin((2 * Math.PI * i) / 60));
    const twice = one.map((value) => 2 * value);
    const base = signalToNoise(one, 50, () => 0.01);
    expect(Math.abs(signalToNoise(twice, 50, () => 0.01) / base - 2)).toBeLessThan(1e-12);
    expect(Math.abs(signalToNoise(one, 50, () => 0.04) / base - 0.5)).toBeLessThan(1e-12);
  });
});
