import { expect, test } from 'vitest';
import { principalTurn } from '../../../packages/analysis/src/hops/principal-turn.ts';

const wave = Float64Array.from({ length: 200 }, (_, i) => Math.sin(i / 7));

test('turning about one axis comes back whichever way the sensor is mounted', () => {
  for (const [x, y, z] of [
    [1, 0, 0],
    [0, 0.6, 0.8],
    [1 / 3, 2 / 3, -2 / 3],
  ]) {
    const { rateRadps, restShare } = principalTurn([
      wave.map((v) => v * x),
      wave.map((v) => v * y),
      wave.map((v) => v * z),
    ]);
    const sign = Math.sign(rateRadps[10] * wave[10]);
    for (let i = 0; i < wave.length; i++) expect(sign * rateRadps[i]).toBeCloseTo(wave[i], 9);
    expect(restShare).toBeLessThan(1e-9);
  }
});

test('turning about every axis alike leaves two thirds out', () => {
  const shifted = (by: number) =>
    Float64Array.from({ length: 3000 }, (_, i) => Math.sin((2 * Math.PI * (by + 1) * i) / 3000));
  expect(principalTurn([shifted(0), shifted(1), shifted(2)]).restShare).toBeCloseTo(2 / 3, 6);
});

test('a sensor that lies still turns about nothing', () => {
  const still = new Float64Array(5);
  expect(principalTurn([still, still, still])).toEqual({ rateRadps: still, restShare: 0 });
});
