import { expect, test } from 'vitest';
import { templateBank } from '../../../../packages/analysis/src/raises/body/bank.ts';
import { correlate } from '../../../../packages/analysis/src/raises/body/correlations.ts';
import { logBayesFactors } from '../../../../packages/analysis/src/raises/body/rise-evidence.ts';
import { whiten } from '../../../../packages/analysis/src/raises/body/whitening.ts';
import { createRandom, gaussian } from '../../../../packages/analysis/src/signal/random.ts';

const bank = templateBank([{ fromS: 1, toS: 1.5, durationStep: 0.4, holdShares: [0.2], fallRatios: [1] }], 20);
const noiseVariance = 0.02;
const random = createRandom(3);
const template = bank.templates[0];
const signal = Float64Array.from({ length: 60 }, (_, i) => {
  const inside = i >= 12 && i < 12 + template.cells;
  return (inside ? 0.05 * template.acceleration[i - 12] : 0) + Math.sqrt(noiseVariance) * gaussian(random);
});
const none = new Float64Array(0);

/** The same factor by brute force: likelihood times prior over a fine grid of rises. */
function oracle(at: number, level: number, spread: number, least: number, misfit: number, present: Uint8Array): number {
  const cells = template.cells;
  const energy = template.acceleration.reduce((sum, value) => sum + value * value, 0);
  const variance = noiseVariance + (misfit * misfit * energy) / cells;
  let sum = 0;
  let prior = 0;
  const step = 2e-5;
  for (let rise = least; rise < 0.4; rise += step) {
    const density = Math.exp(-0.5 * ((rise - level) / spread) ** 2);
    let log = 0;
    for (let j = 0; j < cells; j++) {
      if (present[at + j] === 0) continue;
      const error = signal[at + j] - rise * template.acceleration[j];
      log += -0.5 * ((error * error) / variance + Math.log(variance));
      log -= -0.5 * (signal[at + j] ** 2 / noiseVariance + Math.log(noiseVariance));
    }
    sum += density * Math.exp(log) * step;
    prior += density * step;
  }
  return Math.log(sum / prior);
}

function factorAt(at: number, misfit: number, present: Uint8Array): number {
  const whitened = whiten(signal, present, none);
  const component = { logShare: 0, level: 0.05, spread: 0.015, least: 0.01, misfit };
  const correlations = correlate(whitened, bank, none);
  const spans = new Uint8Array(61);
  return logBayesFactors(whitened, correlations, bank, noiseVariance, [[component]], spans, undefined)[
    at * bank.templates.length
  ];
}

const whole = new Uint8Array(60).fill(1);

test('the closed form equals the integral over all rises, on the repetition and beside it', () => {
  for (const at of [12, 14, 30]) {
    for (const misfit of [0, 0.012]) {
      expect(factorAt(at, misfit, whole)).toBeCloseTo(oracle(at, 0.05, 0.015, 0.01, misfit, whole), 1);
    }
  }
  expect(factorAt(12, 0, whole)).toBeGreaterThan(5);
});

test('absent cells say nothing for or against', () => {
  const gap = Uint8Array.from(whole, (_, i) => (i >= 15 && i < 20 ? 0 : 1));
  // shares of energy are rounded to sixteenths
  expect(Math.abs(factorAt(12, 0, gap) - oracle(12, 0.05, 0.015, 0.01, 0, gap))).toBeLessThan(0.3);
  expect(factorAt(12, 0, new Uint8Array(60))).toBe(0);
});

test('a template that does not fit in before the end has no weight', () => {
  expect(factorAt(50, 0, whole)).toBe(-Infinity);
});
