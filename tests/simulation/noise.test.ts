import { describe, expect, test } from 'vitest';
import { lowPassNoise, lowPassNoiseDensity, sway } from '../../packages/simulation/src/noise.ts';
import { Random } from '../../packages/simulation/src/random.ts';

/** Power of a record in a band of frequencies, by the slow Fourier sum. */
function bandPower(samples: Float64Array, sampleRateHz: number, fromHz: number, toHz: number): number {
  const { length } = samples;
  let power = 0;
  for (let k = Math.ceil((fromHz * length) / sampleRateHz); k < (toHz * length) / sampleRateHz; k++) {
    let [real, imaginary] = [0, 0];
    for (let i = 0; i < length; i++) {
      real += samples[i] * Math.cos((2 * Math.PI * k * i) / length);
      imaginary -= samples[i] * Math.sin((2 * Math.PI * k * i) / length);
    }
    power += (2 * (real * real + imaginary * imaginary)) / (length * length);
  }
  return power;
}

describe('low-pass noise', () => {
  test('holds the power that its density says, in three bands', () => {
    const rateHz = 100;
    const samples = lowPassNoise(20_000, rateHz, 0.1, 3, new Random(4, 0));
    for (const [fromHz, toHz] of [
      [0.5, 2],
      [2, 4],
      [6, 8],
    ]) {
      let expected = 0;
      for (let f = fromHz + 0.005; f < toHz; f += 0.01) expected += 0.01 * lowPassNoiseDensity(f, rateHz, 0.1, 3);
      const lines = (toHz - fromHz) * 200; // independent lines of a record of 200 s
      const ratio = bandPower(samples, rateHz, fromHz, toHz) / expected;
      expect(Math.abs(ratio - 1)).toBeLessThan(4 / Math.sqrt(lines));
    }
  });

  test('has the given density far below the corner and a quarter of its power at the corner', () => {
    expect(Math.abs(lowPassNoiseDensity(0.001, 500, 0.2, 3) - 0.04)).toBeLessThan(1e-6);
    expect(Math.abs(lowPassNoiseDensity(3, 500, 0.2, 3) / 0.01 - 1)).toBeLessThan(0.05);
  });
});

describe('sway', () => {
  test('has exactly the given size and no mean', () => {
    const samples = sway(5000, 50, 0.0024, 0.4, new Random(2, 0));
    const mean = samples.reduce((sum, value) => sum + value, 0) / 5000;
    const square = samples.reduce((sum, value) => sum + value * value, 0) / 5000;
    expect(Math.abs(mean)).toBeLessThan(1e-15);
    expect(Math.abs(Math.sqrt(square) - 0.0024)).toBeLessThan(1e-15);
  });

  test('is redder than white noise: nine tenths of its power below 1.5 Hz', () => {
    for (let seed = 1; seed <= 5; seed++) {
      const samples = sway(4000, 50, 1, 0.4, new Random(seed, 0));
      expect(bandPower(samples, 50, 0.01, 1.5)).toBeGreaterThan(0.9);
    }
  });
});
