import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../../packages/analysis/src/assess/defaults/body.ts';
import { hiddenRepetitions } from '../../../../packages/analysis/src/raises/body/hidden.ts';
import { priorRhythm } from '../../../../packages/analysis/src/raises/body/rhythm.ts';

/** A minute on the model grid. */
const cells = 60 * bodyDefaults.modelRateHz;
const noisy = (varianceM2S4: number) => priorRhythm(bodyDefaults, 30, varianceM2S4);

test('in a quiet recording even a repetition of 6 s would have shown', () => {
  expect(hiddenRepetitions(noisy(0.01 ** 2), cells, bodyDefaults)).toBe(0);
});

test('under heavy sway as many slow repetitions can hide as fit in: twenty of 3 s in a minute', () => {
  expect(hiddenRepetitions(noisy(0.3 ** 2), cells, bodyDefaults)).toBe(20);
});

test('the quickest that would be buried are counted: a rise of 40 mm in half of its duration stands out by four deviations', () => {
  // a cosine of 20 mm amplitude and duration T has 0.02 (2 pi / T)^2 m/s2, over 20 T cells an energy of 10 T times its square: one that
  // stands out by four deviations is in a sd of 0.08 (pi / T)^2 sqrt(10 T) / 4; minimum jerk and the short hold add less than a fifth
  const sd = (durationS: number): number => (1.2 * (0.08 * (Math.PI / durationS) ** 2 * Math.sqrt(10 * durationS))) / 4;
  for (const durationS of [4, 5]) {
    const hidden = hiddenRepetitions(noisy(sd(durationS) ** 2), cells, bodyDefaults);
    expect(hidden).toBeGreaterThanOrEqual(Math.floor(60 / (1.2 * durationS)));
    expect(hidden).toBeLessThanOrEqual(Math.ceil(60 / (0.8 * durationS)));
  }
});
