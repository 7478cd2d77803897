import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../../packages/analysis/src/assess/defaults/body.ts';
import { priorRhythm, repetitionComponents, riseAt } from '../../../../packages/analysis/src/raises/body/rhythm.ts';

const prior = priorRhythm(bodyDefaults, 30, 0.002);

test('before a set is seen its beliefs are those of the settings, without drift, in white noise', () => {
  expect(prior).toMatchObject({
    centreS: 30,
    riseM: bodyDefaults.typicalRiseM,
    riseSpread: bodyDefaults.typicalRiseSpread,
    logDuration: Math.log(bodyDefaults.typicalDurationS),
    pauseShare: bodyDefaults.pauseShare,
    dipShare: bodyDefaults.dipShare,
    noiseVariance: 0.002,
  });
  expect([prior.riseSlope, prior.logDurationSlope, prior.logCycleSlope]).toEqual([0, 0, 0]);
  expect(prior.noiseCoefficients).toHaveLength(0);
  // a set of n repetitions ends after each with a chance of 1 in n
  expect(1 / prior.endShare).toBeCloseTo(bodyDefaults.typicalSetSize, 9);
  expect(prior.logCycle).toBeGreaterThan(prior.logDuration);
});

test('the line of the rise goes through its level at the centre and never below a quarter of it', () => {
  const falling = { ...prior, riseM: 0.06, riseSlope: -0.001 };
  expect([20, 30, 40].map((timeS) => Number(riseAt(falling, timeS).toFixed(9)))).toEqual([0.07, 0.06, 0.05]);
  expect(riseAt(falling, 100)).toBe(0.015);
});

test('the ways in which a repetition may be spread share a probability of one', () => {
  const components = repetitionComponents({ ...prior, riseM: 0.06 }, 0.01, 30);
  expect(components.reduce((sum, { logShare }) => sum + Math.exp(logShare), 0)).toBeCloseTo(1, 12);
  const likeliest = components.reduce((best, one) => (one.logShare > best.logShare ? one : best));
  expect(likeliest).toMatchObject({ level: 0.06, least: 0.01 });
  expect(likeliest.spread).toBeCloseTo(0.06 * prior.riseSpread, 12);
  for (const one of components) {
    expect(one.level).toBeLessThanOrEqual(0.06);
    expect(one.misfit).toBeGreaterThanOrEqual(likeliest.misfit);
  }
});

test('a set lower than the least rise may hold repetitions down to a quarter of its level', () => {
  expect(repetitionComponents({ ...prior, riseM: 0.02 }, 0.01, 30)[0].least).toBe(0.005);
});
