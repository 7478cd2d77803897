import { expect, test } from 'vitest';
import {
  predictionCoefficients,
  whiten,
  whitenTemplate,
} from '../../../../packages/analysis/src/raises/body/whitening.ts';
import { createRandom, gaussian } from '../../../../packages/analysis/src/signal/random.ts';
import '../../../support/close.ts';

/** x[n] = 0.8 x[n-1] - 0.3 x[n-2] + e, e of variance 1. */
function process(count: number): Float64Array {
  const random = createRandom(5);
  const x = new Float64Array(count);
  for (let i = 2; i < count; i++) x[i] = 0.8 * x[i - 1] - 0.3 * x[i - 2] + gaussian(random);
  return x;
}

// the taper of the lags, 1 - lag / 28 at order 2, draws the coefficients a little towards white
test('the coefficients and the variance of a second-order process are found', () => {
  const { coefficients, variance } = predictionCoefficients(process(20_000), new Float64Array(20_000).fill(1), 2, 0);
  expect(coefficients).toBeCloseToEach([0.8, -0.3], { rtol: 0, atol: 0.06 });
  expect(Math.abs(variance - 1)).toBeLessThan(0.15);
});

test('cells without weight do not count', () => {
  const x = process(20_000);
  const weight = new Float64Array(20_000).fill(1);
  for (let i = 5000; i < 6000; i++) {
    x[i] = 500;
    weight[i] = 0;
  }
  expect(predictionCoefficients(x, weight, 2, 0).coefficients).toBeCloseToEach([0.8, -0.3], { rtol: 0, atol: 0.06 });
});

test('a floor of white noise is part of the variance', () => {
  const { variance } = predictionCoefficients(process(20_000), new Float64Array(20_000).fill(1), 2, 3);
  expect(variance).toBeGreaterThan(3.5);
});

test('prediction errors by hand, absent where a forerunner is absent', () => {
  const whitened = whiten(Float64Array.of(1, 2, 4, 8), Uint8Array.of(1, 0, 1, 1), Float64Array.of(0.5));
  expect(whitened.samples).toEqual(Float64Array.of(1, 0, 0, 6));
  expect(whitened.present).toEqual(Uint8Array.of(1, 0, 0, 1));
  expect(whitened.squares).toEqual(Float64Array.of(0, 1, 1, 1, 37));
  expect(whitened.complete).toBe(false);
});

test('a template is whitened as the signal that holds nothing else', () => {
  const template = Float64Array.of(1, 3, -2, 0.5);
  const coefficients = Float64Array.of(0.7, -0.2);
  const whole = whiten(template, new Uint8Array(4).fill(1), coefficients);
  expect(whitenTemplate(template, coefficients)).toBeCloseToEach(whole.samples, { rtol: 0, atol: 1e-15 });
});
