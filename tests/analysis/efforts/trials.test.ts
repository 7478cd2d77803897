import { summarizeTrials } from '@surae/analysis';
import { expect, test } from 'vitest';
import { strengthSettings } from '../../support/effort-settings.ts';

const summary = (...values: number[]) =>
  summarizeTrials(
    values.map((value) => ({ value, u: 5 })),
    strengthSettings.trials,
  )!;

test('best, mean of the best three, variation', () => {
  const { best, bestMean, variation } = summary(980, 1000, 960, 700);
  expect([best.value, bestMean.value]).toEqual([1000, 980]);
  expect(bestMean.u).toBeCloseTo(5 / Math.sqrt(3), 9);
  // mean 910, squares 70^2 + 90^2 + 50^2 + 210^2 over 3
  expect(variation).toBeCloseTo(Math.sqrt((4900 + 8100 + 2500 + 44_100) / 3) / 910, 9);
});

test('the best two within 5 % agree well, within 10 % fairly, else poorly', () => {
  expect(
    [summary(1000, 951, 900), summary(1000, 940, 900), summary(1000, 890, 800)].map(({ consistency }) => consistency),
  ).toEqual(['good', 'fair', 'poor']);
});

test('another trial: too few, still improving, inconsistent', () => {
  expect(summary(1000, 980, 990).another).toEqual([]);
  expect(summary(1000, 980).another).toEqual(['too-few']);
  expect(summary(900, 920, 970).another).toEqual(['still-improving']);
  expect(summary(900, 920, 960).another).toEqual([]);
  expect(summary(1000, 800, 700).another).toEqual(['inconsistent']);
});

test('after five no more are asked for; one trial has no consistency, none has no summary', () => {
  expect([summary(1, 1, 1, 1).mayRepeat, summary(1, 1, 1, 1, 2).mayRepeat]).toEqual([true, false]);
  expect(summary(900)).toMatchObject({ consistency: null, spread: null, variation: null });
  expect(summarizeTrials([], strengthSettings.trials)).toBeNull();
});
