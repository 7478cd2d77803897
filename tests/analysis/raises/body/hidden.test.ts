import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../../packages/analysis/src/assess/defaults/body.ts';
import { hiddenRepetitions } from '../../../../packages/analysis/src/raises/body/hidden.ts';
import { priorRhythm } from '../../../../packages/analysis/src/raises/body/rhythm.ts';

/** A minute on the model grid. */
const cells = 60 * bodyDefaults.modelRateHz;
const noisy = (varianceM2S4: number) => priorRhythm(bodyDefaults, 30, varianceM2S4);

test('in a quiet recording a slow repetition would have shown', () => {
  expect(hiddenRepetitions(noisy(0.01 ** 2), cells, bodyDefaults)).toBe(0);
});

test('under heavy sway as many slow repetitions can hide as fit in: twenty of 3 s in a minute', () => {
  expect(hiddenRepetitions(noisy(0.3 ** 2), cells, bodyDefaults)).toBe(20);
});

test('the step lies where a rise of 40 mm in half of 2.7 s stands out by four deviations', () => {
  // a cosine of 20 mm amplitude and 2.7 s has 0.108 m/s2, over 54 cells an energy of 27 * 0.108 ** 2: about 0.56 m/s2 in
  // all, a quarter of it is 0.14 m/s2; minimum jerk and the short hold move that by less than a third
  const hides = (sd: number): boolean => hiddenRepetitions(noisy(sd ** 2), cells, bodyDefaults) > 0;
  expect(hides(0.14 * 0.7)).toBe(false);
  expect(hides(0.14 * 1.4)).toBe(true);
});
