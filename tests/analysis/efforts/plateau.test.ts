import { expect, test } from 'vitest';
import { plateauAround, unsteadiness } from '../../../packages/analysis/src/efforts/plateau.ts';

test('the plateau reaches as far as the force stays within a tenth of its peak', () => {
  const force = Float64Array.of(0, 89, 91, 100, 95, 92, 89, 99);
  expect(plateauAround(force, 3, 0.1)).toEqual({ from: 2, to: 6 });
});

test('a sine of 2 % about a falling line is unsteady by 1.41 %, the noise taken off', () => {
  const force = Float64Array.from(
    { length: 2000 },
    (_, i) => 1000 - i / 100 + 20 * Math.sin((2 * Math.PI * 5 * i) / 1000),
  );
  const found = unsteadiness(force, { from: 0, to: 2000 }, 1000, 0)!;
  expect(Math.abs(found.value - 0.02 / Math.SQRT2 / 0.99)).toBeLessThan(3e-4);
  expect(found.u).toBeGreaterThan(0);
  expect(unsteadiness(force, { from: 0, to: 2000 }, 1000, 10)!.value).toBeLessThan(found.value);
});

test('less than half a second shows no steadiness', () => {
  expect(unsteadiness(new Float64Array(2000).fill(5), { from: 0, to: 499 }, 1000, 0)).toBeNull();
});
