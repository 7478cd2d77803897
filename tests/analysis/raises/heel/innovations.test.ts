import { expect, test } from 'vitest';
import { softMisfit, softRoot, whiten, whitenFour } from '../../../../packages/analysis/src/raises/heel/innovations.ts';
import { whitening } from '../../../../packages/analysis/src/raises/heel/sway-noise.ts';

test('whitened derivatives are what differences of whitened departures say', () => {
  const seen = Float64Array.from({ length: 20 }, (_, i) => (i === 7 ? 0 : 1));
  const gains = whitening({ swaySdM: 2, swayTimeS: 0.4, whiteSdM: 0.5 }, 0.05, seen);
  const slopes = [0, 1, 2, 3].map(
    (k) =>
      (i: number): number =>
        Math.sin(i / 3 + k),
  );
  const walk = (shift: (i: number) => number): Float64Array => {
    const white = new Float64Array(20);
    const departures = Float64Array.from(seen, (_, i) => Math.cos(i) + shift(i));
    whiten(gains, departures, white);
    return white;
  };
  // a column of something else stands before the four
  const columns = Float64Array.from({ length: 100 }, (_, at) =>
    at < 20 ? 9 : slopes[Math.floor(at / 20) - 1](at % 20),
  );
  whitenFour(gains, columns, 1, 0);
  const base = walk(() => 0);
  slopes.forEach((slope, k) => {
    walk(slope).forEach((value, i) => expect(columns[20 * (k + 1) + i]).toBeCloseTo(value - base[i], 12));
  });
  expect(columns.subarray(0, 20).every((value) => value === 9)).toBe(true);
  expect(base[7]).toBeCloseTo(0, 12);
});

test('white noise alone is only scaled', () => {
  const gains = whitening({ swaySdM: 1e-9, swayTimeS: 1, whiteSdM: 0.5 }, 0.1, new Float64Array(3).fill(1));
  const white = new Float64Array(3);
  whiten(gains, Float64Array.of(1, -1, 0), white);
  [2, -2, 0].forEach((value, i) => expect(white[i]).toBeCloseTo(value, 6));
});

test('a small departure costs its square, a large one grows in proportion', () => {
  expect(softMisfit(softRoot(0.01))).toBeCloseTo(0.01, 4);
  const step = softMisfit(softRoot(90 ** 2)) - softMisfit(softRoot(60 ** 2));
  // far out the slope is twice the softness of 3
  expect(Math.abs(step / 30 - 6)).toBeLessThan(0.02);
});

test('columns that are 0 up to a sample may be walked from there', () => {
  const gains = whitening({ swaySdM: 2, swayTimeS: 0.4, whiteSdM: 0.5 }, 0.05, new Float64Array(20).fill(1));
  const late = (): Float64Array =>
    Float64Array.from({ length: 80 }, (_, at) => (at % 20 < 9 ? 0 : Math.cos(at) + Math.floor(at / 20)));
  const [all, some] = [late(), late()];
  whitenFour(gains, all, 0, 0);
  whitenFour(gains, some, 0, 9);
  expect(some).toEqual(all);
});
