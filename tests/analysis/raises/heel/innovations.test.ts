import { expect, test } from 'vitest';
import { innovations, softMisfit, softRoot } from '../../../../packages/analysis/src/raises/heel/innovations.ts';
import { whitening } from '../../../../packages/analysis/src/raises/heel/sway-noise.ts';

test('whitened derivatives are what differences of whitened departures say', () => {
  const seen = Float64Array.from({ length: 20 }, (_, i) => (i === 7 ? 0 : 1));
  const gains = whitening({ swaySdM: 2, swayTimeS: 0.4, whiteSdM: 0.5 }, 0.05, seen);
  const slope = (i: number): number => Math.sin(i / 3);
  const walk = (shift: number): number[] => {
    const { take } = innovations(gains, 1);
    return Array.from(seen, (_, i) => take(i, Math.cos(i) + shift * slope(i), Float64Array.of(slope(i)), 1));
  };
  const { white, take } = innovations(gains, 1);
  const [base, moved] = [walk(0), walk(1)];
  base.forEach((value, i) => {
    expect(take(i, Math.cos(i), Float64Array.of(slope(i)), 1)).toBeCloseTo(value, 12);
    expect(white[0]).toBeCloseTo(moved[i] - value, 12);
  });
  expect(base[7]).toBeCloseTo(0, 12);
});

test('white noise alone is only scaled', () => {
  const gains = whitening({ swaySdM: 1e-9, swayTimeS: 1, whiteSdM: 0.5 }, 0.1, new Float64Array(3).fill(1));
  const { take } = innovations(gains, 0);
  expect(take(0, 1, new Float64Array(0), 0)).toBeCloseTo(2, 6);
  expect(take(1, -1, new Float64Array(0), 0)).toBeCloseTo(-2, 6);
});

test('a small departure costs its square, a large one grows in proportion', () => {
  expect(softMisfit(softRoot(0.01))).toBeCloseTo(0.01, 4);
  const step = softMisfit(softRoot(90 ** 2)) - softMisfit(softRoot(60 ** 2));
  // far out the slope is twice the softness of 3
  expect(Math.abs(step / 30 - 6)).toBeLessThan(0.02);
});

test('parameters that had no slope so far may be left out', () => {
  const gains = whitening({ swaySdM: 2, swayTimeS: 0.4, whiteSdM: 0.5 }, 0.05, new Float64Array(20).fill(1));
  const late = (i: number): number => (i < 9 ? 0 : Math.cos(i));
  const [all, some] = [innovations(gains, 2), innovations(gains, 2)];
  for (let i = 0; i < 20; i++) {
    all.take(i, 1, Float64Array.of(i, late(i)), 2);
    some.take(i, 1, Float64Array.of(i, late(i)), i < 9 ? 1 : 2);
    expect(some.white).toEqual(all.white);
  }
});
