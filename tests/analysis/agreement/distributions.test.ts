import { expect, test } from 'vitest';
import {
  chiSquareQuantile,
  fQuantile,
  fUpperTail,
  tQuantile,
  tTwoSided,
} from '../../../packages/analysis/src/agreement/distributions.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';

interface Given {
  readonly f: { p: number; a: number; b: number }[];
  readonly fTail: { f: number; a: number; b: number }[];
  readonly t: { p: number; df: number }[];
  readonly chiSquare: { p: number; df: number }[];
}

test('the borrowed distributions agree with R, whole and broken degrees of freedom alike', () => {
  const { input, expected, ...tolerance } = readReference<Given, Record<keyof Given | 'tTwoSided', number[]>>(
    'agreement.distributions',
  );
  expect(input.f.length).toBeGreaterThan(200);
  // far out in the lower tail the library keeps eight digits: more than any interval here shows
  expect(input.f.map(({ p, a, b }) => fQuantile(p, a, b))).toBeCloseToEach(expected.f, { rtol: 1e-8, atol: 0 });
  expect(input.fTail.map(({ f, a, b }) => fUpperTail(f, a, b))).toBeCloseToEach(expected.fTail, tolerance);
  expect(input.t.map(({ p, df }) => tQuantile(p, df))).toBeCloseToEach(expected.t, { rtol: 1e-8, atol: 1e-12 });
  expect(input.t.map(({ p, df }) => tTwoSided(p * 10, df))).toBeCloseToEach(expected.tTwoSided, tolerance);
  expect(input.chiSquare.map(({ p, df }) => chiSquareQuantile(p, df))).toBeCloseToEach(expected.chiSquare, {
    rtol: 1e-8,
    atol: 1e-12,
  });
});

test('values in closed form: t of 1 and of 2, chi-square of 2, F of 2 and 2', () => {
  expect([
    tQuantile(0.975, 1),
    tQuantile(0.975, 2),
    chiSquareQuantile(0.5, 2),
    fQuantile(0.9, 2, 2),
    fUpperTail(9, 2, 2),
    tTwoSided(1, 1),
  ]).toBeCloseToEach([Math.tan(Math.PI * 0.475), 0.95 / Math.sqrt(2 * 0.975 * 0.025), 2 * Math.LN2, 9, 0.1, 0.5], {
    rtol: 1e-9,
    atol: 0,
  });
  expect(fUpperTail(0, 3, 4)).toBe(1);
});

test('impossible probabilities, degrees of freedom and values are refused', () => {
  const refused = expect.objectContaining({ code: 'out-of-range' }) as Error;
  for (const p of [0, 1, -1, Number.NaN]) {
    expect(() => fQuantile(p, 1, 1)).toThrow(refused);
    expect(() => tQuantile(p, 1)).toThrow(refused);
    expect(() => chiSquareQuantile(p, 1)).toThrow(refused);
  }
  for (const df of [0, -1, Number.NaN]) {
    expect(() => fQuantile(0.5, df, 1)).toThrow(refused);
    expect(() => fQuantile(0.5, 1, df)).toThrow(refused);
    expect(() => fUpperTail(1, df, 1)).toThrow(refused);
    expect(() => tQuantile(0.5, df)).toThrow(refused);
    expect(() => tTwoSided(1, df)).toThrow(refused);
    expect(() => chiSquareQuantile(0.5, df)).toThrow(refused);
  }
  expect(() => fUpperTail(-1, 1, 1)).toThrow(refused);
  expect(() => tTwoSided(Number.NaN, 1)).toThrow(refused);
});
