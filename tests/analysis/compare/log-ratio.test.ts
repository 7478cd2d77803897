import { boundedDifference, boundedRatio, InputError, logRatio, probabilityBelow } from '@surae/analysis';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createRandom, gaussian } from '../../../packages/analysis/src/signal/random.ts';
import '../../support/close.ts';
import { runs } from '../../support/runs.ts';

/** Ratio of two values with one coefficient of variation. */
const withCv = (top: number, bottom: number, cv: number) => logRatio(top, cv * top, bottom, cv * bottom);

describe('limb symmetry index, involved over uninvolved (Silbernagel 2010; worked numbers calculated)', () => {
  test.each([
    [900, 1000, 0.9],
    [800, 1000, 0.8],
    [850, 1000, 0.85],
    [24, 30, 0.8],
    [20, 25, 0.8],
    // norm 1.5 of body weight, limbs at 1.0 and 1.1: passes 90 and is two thirds of the norm
    [1.0, 1.1, 1 / 1.1],
    // more than the other side is allowed
    [11, 10, 1.1],
  ])('%d over %d is %d', (top, bottom, expected) => {
    expect([withCv(top, bottom, 0.05).value]).toBeCloseToEach([expected], { rtol: 1e-12, atol: 0 });
  });
});

test('the logarithm of the ratio, which is the scale of the interval: 10.536, 22.314 and 16.252 hundredths (calculated)', () => {
  const hundredths = [900, 800, 850].map((involved) => -100 * Math.log(withCv(involved, 1000, 0.05).value));
  expect(hundredths).toBeCloseToEach([10.536, 22.314, 16.252], { rtol: 0, atol: 0.0005 });
});

describe('interval around 90 % by coefficient of variation, errors of the logarithms independent', () => {
  // a coefficient of variation that is a factor less one, exp(s) - 1 (Hopkins 2000, Sports Med 30:1), is ln(1 + cv) on the log scale
  test.each([
    [0.139, 62.7, 129.1],
    [0.066, 75.4, 107.4],
    [0.05, 78.6, 103.0],
  ])('%d as a factor less one gives %d to %d', (cv, low, high) => {
    const ratio = withCv(90, 100, Math.log(1 + cv));
    expect([ratio.low * 100, ratio.high * 100]).toBeCloseToEach([low, high], { rtol: 0, atol: 0.051 });
  });

  // a coefficient of variation that is a standard deviation over a mean, in whole percent
  test.each([
    [0.03, 83, 98],
    [0.05, 78, 103],
    [0.0875, 71, 115],
    [0.139, 61, 132],
  ])('%d is printed as %d to %d', (cv, low, high) => {
    const ratio = withCv(90, 100, cv);
    expect([Math.round(ratio.low * 100), Math.round(ratio.high * 100)]).toEqual([low, high]);
  });

  // height of a raise, a battery of jumps, work: computed
  test.each([
    [0.066, 75, 108],
    [0.088, 71, 115],
    [0.131, 63, 129],
  ])('%d gives %d to %d, by exp(ln 0.9 +- 1.96 sqrt 2 cv)', (cv, low, high) => {
    const ratio = withCv(90, 100, cv);
    const reach = 1.96 * Math.SQRT2 * cv;
    const exact = [Math.exp(Math.log(0.9) - reach), Math.exp(Math.log(0.9) + reach)];
    expect([ratio.low, ratio.high]).toBeCloseToEach(exact, { rtol: 1e-12, atol: 0 });
    expect([Math.round(ratio.low * 100), Math.round(ratio.high * 100)]).toEqual([low, high]);
  });

  test.each([
    [0.03, 92],
    [0.05, 87],
    [0.066, 83],
    [0.088, 78],
    [0.13, 69],
    [0.139, 68],
  ])('with %d an observed ratio of %d % is the first to leave out equal sides', (cv, percent) => {
    expect(withCv(percent, 100, cv).high).toBeLessThan(1);
    expect(withCv(percent + 1, 100, cv).high).toBeGreaterThan(1);
  });
});

describe('how often a pass mark of 90 % is wrong: both legs equal and under it, or one at 80 % and not', () => {
  /** Probability of an observed ratio under 90 % for a true one; the standard error of its logarithm is sqrt 2 times that of a leg. */
  const chance = (truth: number, ofLeg: number): number =>
    probabilityBelow(boundedRatio(truth, Math.SQRT2 * ofLeg), 0.9);

  // printed in whole percent, with the error of a leg as ln(1 + cv)
  test.each([
    [0.05, 6, 4],
    [0.088, 19, 16],
    [0.131, 27, 25],
    [0.139, 28, 26],
  ])('with %d, equal legs come under it in %d %, and 80 % reaches it in %d %', (cv, equal, reaches) => {
    const chances = [chance(1, Math.log(1 + cv)), 1 - chance(0.8, Math.log(1 + cv))];
    expect(chances.map((one) => Math.round(100 * one))).toEqual([equal, reaches]);
    // with cv itself, as everywhere here, each is larger by no more than 1.6 percentage points
    const ours = [chance(1, cv), 1 - chance(0.8, cv)];
    ours.forEach((one, i) => {
      expect(one).toBeGreaterThan(chances[i]);
      expect(one - chances[i]).toBeLessThan(0.016);
    });
  });

  test('the chances are those of drawn ratios', () => {
    const random = createRandom(7);
    const cv = 0.139;
    let [equal, reaches] = [0, 0];
    const draws = 20_000;
    for (let i = 0; i < draws; i++) {
      const noise = cv * (gaussian(random) - gaussian(random));
      if (Math.exp(noise) < 0.9) equal += 1;
      if (0.8 * Math.exp(noise) >= 0.9) reaches += 1;
    }
    // five standard errors of a share near 0.3 in 20 000 draws
    expect([equal / draws, reaches / draws]).toBeCloseToEach([chance(1, cv), 1 - chance(0.8, cv)], {
      rtol: 0,
      atol: 0.016,
    });
  });
});

test('19 over 27 repetitions with an error of 2.25: 70 % (53 to 93), under 90 % with 0.96, difference 8 +- 6', () => {
  const ratio = logRatio(19, 2.25, 27, 2.25);
  expect([ratio.value, ratio.low, ratio.high].map((one) => Math.round(one * 100))).toEqual([70, 53, 93]);
  expect(probabilityBelow(ratio, 0.9).toFixed(2)).toBe('0.96');
  const difference = boundedDifference(27, 2.25, 19, 2.25);
  expect(difference.value).toBe(8);
  expect([difference.low, difference.high]).toBeCloseToEach([8 - 6.237, 8 + 6.237], { rtol: 0, atol: 0.001 });
});

test('1150 over 1425 N with 5 %: 81 % (70 to 93), under 90 % with 0.94', () => {
  const ratio = withCv(1150, 1425, 0.05);
  expect([ratio.value, ratio.low, ratio.high].map((one) => Math.round(one * 100))).toEqual([81, 70, 93]);
  expect(probabilityBelow(ratio, 0.9).toFixed(2)).toBe('0.94');
});

test('on the line the probability is one half; without error it is plain', () => {
  expect(probabilityBelow(withCv(9, 10, 0.05), 0.9)).toBe(0.5);
  expect(probabilityBelow(logRatio(8, 0, 10, 0), 0.9)).toBe(1);
  expect(probabilityBelow(logRatio(10, 0, 10, 0), 0.9)).toBe(0);
  expect(probabilityBelow(logRatio(9, 0, 10, 0), 0.9)).toBe(0.5);
});

test('the probability is that of drawn logarithms', () => {
  // slow oracle: a midpoint sum of the normal density up to the line
  const ratio = logRatio(17, 2, 20, 1.5);
  let sum = 0;
  const steps = 20_000;
  const toZ = (Math.log(0.9) - Math.log(17 / 20)) / Math.hypot(2 / 17, 1.5 / 20);
  for (let k = 0; k < steps; k++) {
    const z = -10 + ((toZ + 10) * (k + 0.5)) / steps;
    sum += (Math.exp(-0.5 * z * z) * (toZ + 10)) / steps / Math.sqrt(2 * Math.PI);
  }
  expect([probabilityBelow(ratio, 0.9)]).toBeCloseToEach([sum], { rtol: 1e-6, atol: 0 });
});

const positive = fc.double({ min: 1e-3, max: 1e4, noNaN: true });
const share = fc.double({ min: 0, max: 0.8, noNaN: true });

test('swapping the sides inverts the ratio and turns its interval round', () => {
  fc.assert(
    fc.property(positive, share, positive, share, (a, shareA, b, shareB) => {
      const one = logRatio(a, a * shareA, b, b * shareB);
      const other = logRatio(b, b * shareB, a, a * shareA);
      expect([other.value, other.low, other.high, other.logU]).toBeCloseToEach(
        [1 / one.value, 1 / one.high, 1 / one.low, one.logU],
        { rtol: 1e-12, atol: 0 },
      );
    }),
    runs(100, 2000),
  );
});

test('a common scale, which is what another unit is, changes nothing', () => {
  fc.assert(
    fc.property(positive, share, positive, share, positive, (a, shareA, b, shareB, by) => {
      const one = logRatio(a, a * shareA, b, b * shareB);
      const other = logRatio(a * by, a * shareA * by, b * by, b * shareB * by);
      expect([other.value, other.low, other.high, probabilityBelow(other, 0.9)]).toBeCloseToEach(
        [one.value, one.low, one.high, probabilityBelow(one, 0.9)],
        { rtol: 1e-9, atol: 1e-9 },
      );
    }),
    runs(100, 2000),
  );
});

test.each([
  [0, 1, 10, 1],
  [10, 1, 0, 1],
  [0, 0, 0, 0],
  [-1, 1, 10, 1],
  [10, -1, 10, 1],
  [10, 1, 10, Number.NaN],
  [Number.POSITIVE_INFINITY, 1, 10, 1],
])('%d +- %d over %d +- %d is refused', (top, topU, bottom, bottomU) => {
  expect(() => logRatio(top, topU, bottom, bottomU)).toThrow(InputError);
});

test('a line or a difference that makes no sense is refused', () => {
  expect(() => probabilityBelow(withCv(9, 10, 0.05), 0)).toThrow(InputError);
  expect(() => boundedDifference(1, -1, 2, 1)).toThrow(InputError);
  expect(() => boundedDifference(Number.NaN, 1, 2, 1)).toThrow(InputError);
});
