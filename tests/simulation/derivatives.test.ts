import { expect, test } from 'vitest';
import { firstDerivative, secondDerivative } from '../../packages/simulation/src/derivatives.ts';

test('a parabola has a straight first and a constant second derivative', () => {
  const samples = Float64Array.from({ length: 6 }, (_, i) => 3 * (i / 10) ** 2);
  const slope = firstDerivative(samples, 10);
  const curve = secondDerivative(samples, 10);
  for (let i = 1; i < 5; i++) expect(Math.abs(slope[i] - 0.6 * i)).toBeLessThan(1e-12);
  for (const value of curve) expect(Math.abs(value - 6)).toBeLessThan(1e-10);
});

test('the ends repeat their neighbours', () => {
  const samples = Float64Array.of(0, 1, 4, 9, 11);
  for (const derivative of [firstDerivative, secondDerivative]) {
    const result = derivative(samples, 1);
    expect([result[0], result[4]]).toEqual([result[1], result[3]]);
  }
});
