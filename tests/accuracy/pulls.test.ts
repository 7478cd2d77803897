import * as analysis from '@surae/analysis';
import * as shared from '@surae/shared';
import type { Level } from '@surae/simulation';
import * as simulation from '@surae/simulation';
import { describe, expect, test } from 'vitest';
import { byAnalysis, lostPullGround, measurePulls, missedPullGoals, PullFigures } from './modules.ts';

// The long run measures recordings that nothing was tuned on; the short run takes others, and fewer.
const whole = process.env['SURAE_LONG'] === '1';
const from = whole ? 43_001 : 20_001;
const traces = whole ? 100 : 4;
const levels: Level[] = ['clean', 'typical', 'hard', 'field'];
const ratesHz = whole ? [80, 200, 1000, 2000] : [80, 1000];

describe('isometric efforts on simulated recordings', () => {
  test.each(levels.flatMap((level) => ratesHz.map((sampleRateHz) => ({ level, sampleRateHz }))))(
    '$level at $sampleRateHz Hz: count, onset, peak and rate reach their goals',
    ({ level, sampleRateHz }) => {
      const find = byAnalysis(analysis, shared);
      const summary = measurePulls({ simulation, level, sampleRateHz, traces, from, find }).summary();
      // few recordings scatter: one knock that is not seen on one peak of twenty makes up for the others
      expect(lostPullGround(level, sampleRateHz, summary, whole ? 1.25 : 3)).toEqual([]);
    },
    3_600_000,
  );
});

describe('figures of accuracy of efforts', () => {
  const truth = {
    kind: 'fast',
    onsetS: 2,
    endS: 4,
    peakN: 1000,
    bestHalfSecondN: 990,
    risenN: [1, 2, 3, 800],
  } as const;
  const perfect = {
    onsetS: { value: 2, u: 0.001 },
    peakS: 3,
    peakN: { value: 1000, u: 1 },
    meanN: { value: 990, u: 1 },
    rate200: { value: 4000, u: 10 },
    peakJudged: true,
    onsetJudged: true,
  };
  type Found = Omit<typeof perfect, 'rate200'> & { readonly rate200: { value: number; u: number } | null };
  const summaryOf = (efforts: Found[], truths = [truth]) => {
    const figures = new PullFigures();
    figures.add({ seed: 1, efforts, truth: truths });
    return figures.summary();
  };

  test('a perfect answer has no errors', () => {
    expect(summaryOf([perfect])).toMatchObject({
      exact: 1,
      onsetP95Ms: 0,
      peakRmsPercent: 0,
      riseRmsPercent: 0,
      riseCoverage: 1,
    });
  });

  test('errors are in ms and percent of the truth, and fall out of too small intervals', () => {
    const found = {
      ...perfect,
      onsetS: { value: 2.004, u: 0.003 },
      peakN: { value: 1010, u: 1 },
      rate200: { value: 3960, u: 30 },
    };
    const summary = summaryOf([found]);
    expect(
      [summary.onsetP95Ms, summary.peakRmsPercent, summary.riseRmsPercent].map((value) => Number(value!.toFixed(9))),
    ).toEqual([4, 1, 1]);
    expect([summary.onsetCoverage, summary.peakCoverage, summary.riseCoverage]).toEqual([1, 0, 1]);
  });

  test('a missed and an invented effort are no exact count, and leave no errors', () => {
    expect(summaryOf([])).toMatchObject({ exact: 0, judged: 0 });
    expect(summaryOf([perfect, { ...perfect, peakS: 9 }]).exact).toBe(0);
    expect(summaryOf([]).onsetP95Ms).toBeUndefined();
  });

  test('a goal that is missed is named; a figure that is missing is a miss', () => {
    const good = summaryOf([perfect]);
    expect(missedPullGoals('hard', 1000, good)).toEqual([]);
    expect(missedPullGoals('hard', 1000, { ...good, onsetP95Ms: 6, exact: 0.98 })).toEqual([
      'hard 1000 Hz exact: 0.980, goal 0.99',
      'hard 1000 Hz onsetP95Ms: 6.000, goal 5',
    ]);
    expect(missedPullGoals('hard', 1000, summaryOf([]))).toHaveLength(4);
    expect(lostPullGround('hard', 1000, { ...good, onsetP95Ms: 6 }, 1.25)).toEqual([]);
    expect(lostPullGround('field', 80, { ...good, peakRmsPercent: 0.45 }, 1)).toEqual([]);
    expect(lostPullGround('hard', 80, { ...good, peakRmsPercent: 0.45 }, 1)).toHaveLength(1);
    // a slow sensor has no rate over 200 ms
    expect(missedPullGoals('typical', 80, summaryOf([{ ...perfect, rate200: null }]))).toEqual([]);
  });
});

test('95 % intervals of the disturbed levels together hold 93 to 97 % of onsets, peaks, means and rates', () => {
  const find = byAnalysis(analysis, shared);
  const [from2, each] = whole ? [41_001, 60] : [21_001, 8];
  const shares = {
    onsetCoverage: [] as number[],
    peakCoverage: [] as number[],
    meanCoverage: [] as number[],
    riseCoverage: [] as number[],
  };
  const disturbed: Level[] = ['typical', 'hard', 'field'];
  for (const level of disturbed) {
    for (const sampleRateHz of [80, 200, 1000]) {
      const summary = measurePulls({ simulation, level, sampleRateHz, traces: each, from: from2, find }).summary();
      for (const key of Object.keys(shares) as (keyof typeof shares)[]) {
        const share = summary[key];
        if (share !== undefined) shares[key].push(share);
      }
    }
  }
  for (const of of Object.values(shares)) {
    const mean = of.reduce((sum, share) => sum + share, 0) / of.length;
    // the form of real rises is less certain than that of simulated ones: more than 97 % is meant for the onset
    expect(mean).toBeGreaterThan(whole ? 0.93 : 0.91);
    expect(mean).toBeLessThan(whole ? 0.99 : 1);
  }
}, 3_600_000);
