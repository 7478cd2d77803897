import { expect, test } from 'vitest';
import { logNormalCdf } from '../../../../packages/analysis/src/raises/body/log-normal.ts';
import { normalCdf } from '../../../../packages/analysis/src/signal/normal.ts';

test('everywhere within 1e-4 of the logarithm of the distribution itself, where that can be computed', () => {
  for (let z = -30; z <= 8; z += 0.0371) {
    const exact = Math.log(normalCdf(z));
    // the series leaves out 15 / z^6, which is 3e-4 at -6 and falls quickly
    const allowed = z < -6 ? 20 / z ** 6 : 1e-4;
    expect(Math.abs(logNormalCdf(z) - exact), `at ${z}`).toBeLessThan(allowed);
  }
});

test('far beyond any probability that a number can hold it still falls as a parabola', () => {
  // log of the density at -100, less log 100, and the first term of the series
  expect(logNormalCdf(-100)).toBeCloseTo(-5000 - 0.5 * Math.log(2 * Math.PI) - Math.log(100) - 1e-4, 6);
  expect(logNormalCdf(1e6)).toBe(0);
});
