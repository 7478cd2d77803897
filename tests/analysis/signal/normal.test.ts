import fc from 'fast-check';
import { expect, test } from 'vitest';
import { normalCdf, normalQuantile } from '../../../packages/analysis/src/signal/normal.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';
import { runs } from '../../support/runs.ts';

test('half lies below 0, and 97.5 % below 1.96', () => {
  expect(normalCdf(0)).toBe(0.5);
  expect([normalQuantile(0.975), normalQuantile(0.5)]).toBeCloseToEach([1.959963984540054, 0], {
    rtol: 1e-13,
    atol: 1e-15,
  });
});

test('agrees with the sum of a fine grid under the curve', () => {
  // Simpson's rule from -10 to z, where what lies below -10 is 1e-23
  for (const z of [-2, -0.3, 0.7, 2.9]) {
    const parts = 4000;
    const h = (z + 10) / parts;
    let sum = 0;
    for (let i = 0; i <= parts; i++) {
      const weight = i === 0 || i === parts ? 1 : i % 2 === 1 ? 4 : 2;
      sum += weight * Math.exp(-0.5 * (i * h - 10) ** 2);
    }
    expect([normalCdf(z)]).toBeCloseToEach([(sum * h) / 3 / Math.sqrt(2 * Math.PI)], { rtol: 1e-11, atol: 0 });
  }
});

test('agrees with scipy.stats.norm, far tails included', () => {
  const { input, expected, ...tolerance } = readReference<
    { z: number[]; probability: number[] },
    { cdf: number[]; quantile: number[] }
  >('normal.values');
  expect(input.z.map(normalCdf)).toBeCloseToEach(expected.cdf, tolerance);
  // at one half the quantile is 0 and only its absolute error has a meaning
  expect(input.probability.map(normalQuantile)).toBeCloseToEach(expected.quantile, {
    rtol: tolerance.rtol,
    atol: 1e-15,
  });
});

test('laws: rises, and the quantile undoes it', () => {
  fc.assert(
    fc.property(fc.double({ min: -8, max: 5, noNaN: true }), (z) => {
      expect(normalCdf(z + 0.001)).toBeGreaterThan(normalCdf(z));
      // near 1 the probability has lost digits that the quantile cannot bring back
      expect([normalQuantile(normalCdf(z))]).toBeCloseToEach([z], { rtol: 1e-9, atol: 1e-9 });
    }),
    runs(200, 5000),
  );
});

test('probabilities of 0 and 1 and a NaN are refused', () => {
  for (const p of [0, 1, -0.1, Number.NaN]) {
    expect(() => normalQuantile(p)).toThrow(expect.objectContaining({ code: 'out-of-range' }));
  }
  expect(() => normalCdf(Number.NaN)).toThrow(expect.objectContaining({ code: 'out-of-range' }));
});
