import { findEfforts, type IsometricEffort } from '@surae/analysis';
import { describe, expect, test } from 'vitest';
import { pullScore, pullTrials, type TrialsBy } from '../../../packages/analysis/src/assess/pull-trials.ts';
import { strengthSettings } from '../../support/effort-settings.ts';
import { exponentialEffort, madeTrace } from '../../support/made-pull.ts';

const trace = madeTrace({ efforts: [exponentialEffort(3, 1000, 0.08, 3)], lengthS: 10, sampleRateHz: 1000, noise: 1 });
const [pattern] = findEfforts(trace, { polarity: 'find' }, strengthSettings).efforts;
const both = (net: number, rest = 85) => ({ net: { value: net, u: 2 }, gross: { value: net + rest, u: 2 } });

/** An effort with these figures, numbered in the order given. */
function one(index: number, mean: number | null, peak: number, rate: number | null = null) {
  const rates = [0.05, 0.1].map((windowS) => ({
    windowS,
    rate: rate === null ? null : { value: windowS === 0.1 ? rate : 2 * rate, u: 50 },
    reason: rate === null ? ('ramped' as const) : null,
    coarse: false,
  }));
  const effort: IsometricEffort = { ...pattern, bestMean: mean === null ? null : both(mean), peak: both(peak), rates };
  return { index, effort };
}

const by: TrialsBy = {
  rule: 'best-mean',
  rateWindowS: 0.1,
  trials: strengthSettings.trials,
  scale: { relativeU: 0, zeroU: 0, correlation: 0 },
};

describe('the accepted efforts taken together', () => {
  const four = [one(1, 980, 1100), one(3, 1000, 1050), one(4, 960, 1020), one(6, 900, 990)];

  test('greatest mean and greatest peak may come from two efforts; gross and net of one stay together', () => {
    const trials = pullTrials(four, by)!;
    expect(trials).toMatchObject({
      accepted: [1, 3, 4, 6],
      bestMeanEffort: 3,
      bestMean: both(1000),
      bestPeakEffort: 1,
      bestPeak: both(1100),
      of: 3,
      consistency: 'good',
      another: [],
      mayRepeat: true,
      rates: [],
    });
    expect(trials.meanOfBest!.value).toBe(980);
    expect(trials.meanOfBest!.u).toBeCloseTo(2 / Math.sqrt(3), 9);
    expect(trials.spread!.value).toBeCloseTo(0.02, 12);
  });

  test('what all share enters the forces and not how far they agree', () => {
    const shared = pullTrials(four, { ...by, scale: { relativeU: 0.01, zeroU: 3, correlation: 0 } })!;
    expect(shared.bestMean!.net.u).toBeCloseTo(Math.hypot(2, 10), 9);
    expect(shared.bestMean!.gross.u).toBeCloseTo(Math.hypot(2, 10.85, 3), 9);
    expect(shared.meanOfBest!.u).toBeCloseTo(Math.hypot(2 / Math.sqrt(3), 9.8), 9);
    expect(shared.spread).toEqual(pullTrials(four, by)!.spread);
  });

  test('none: no trials; too short for a mean: no mean, never zero', () => {
    expect(pullTrials([], by)).toBeNull();
    const trials = pullTrials([one(1, null, 700)], by)!;
    expect(trials).toMatchObject({ bestMean: null, bestMeanEffort: null, meanOfBest: null, of: 0, spread: null });
    expect(trials.another).toEqual(['too-few']);
    expect(pullScore(trials, 'N', by)).toEqual({ rule: 'best-mean', net: null, gross: null, unit: 'N', effort: null });
  });

  test('another one is asked for while the last is the best by over 5 %', () => {
    const rising = [one(1, 900, 950), one(2, 980, 1000), one(3, 1060, 1100)];
    expect(pullTrials(rising, by)!.another).toEqual(['still-improving']);
    expect(pullTrials([...rising, ...four.slice(0, 2)], by)!.mayRepeat).toBe(false);
  });

  test('rates: the best and the mean of the best three of those that have one', () => {
    const fast = [one(1, 800, 900, 5000), one(2, 800, 900), one(3, 800, 900, 6000), one(4, 800, 900, 5500)];
    const { rates } = pullTrials([...fast, one(5, 800, 900, 1000)], by)!;
    expect(
      rates.map(({ windowS, count, best, meanOfBest, of }) => [windowS, count, best.value, meanOfBest.value, of]),
    ).toEqual([
      [0.05, 4, 12_000, 11_000, 3],
      [0.1, 4, 6000, 5500, 3],
    ]);
  });
});

describe('the score by the rule of the protocol', () => {
  const efforts = [one(1, 980, 1100, 5000), one(2, 1000, 1050, 7000)];
  const score = (rule: TrialsBy['rule'], unit: 'N' | 'N.m' = 'N') =>
    pullScore(pullTrials(efforts, { ...by, rule }), unit, { ...by, rule });

  test('best mean, best peak, mean of the best rates', () => {
    expect(score('best-mean')).toMatchObject({ net: { value: 1000 }, gross: { value: 1085 }, unit: 'N', effort: 2 });
    expect(score('best-peak', 'N.m')).toMatchObject({ net: { value: 1100 }, unit: 'N.m', effort: 1 });
    expect(score('mean-of-best-rates')).toMatchObject({ net: { value: 6000 }, gross: null, unit: 'N/s', effort: null });
  });

  test('trials agree by what they are scored by', () => {
    expect(pullTrials(efforts, { ...by, rule: 'best-mean' })!.consistency).toBe('good');
    expect(pullTrials(efforts, { ...by, rule: 'mean-of-best-rates' })!.consistency).toBe('poor');
  });

  test('without trials there is none', () => {
    expect(pullScore(null, 'N', by)).toMatchObject({ net: null, gross: null, effort: null });
  });
});
