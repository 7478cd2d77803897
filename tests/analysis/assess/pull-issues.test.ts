import { defaultSettings, findEfforts, type IssueCode, type Trace } from '@surae/analysis';
import { expect, test } from 'vitest';
import { type PullsLookedAt, pullIssues } from '../../../packages/analysis/src/assess/pull-issues.ts';
import { strengthSettings } from '../../support/effort-settings.ts';
import { madeSamples, madeTrace, rampEffort, traceOf } from '../../support/made-pull.ts';

const { efforts: method, signal } = defaultSettings();
const heights = [800, 820];
const made = {
  efforts: heights.map((height, k) => rampEffort(4 + 12 * k, height, 2, 3)),
  lengthS: 28,
  sampleRateHz: 250,
  noise: 0.5,
};

function issuesOf(trace: Trace, change: Partial<PullsLookedAt> = {}) {
  const found = findEfforts(trace, { polarity: 'positive' }, strengthSettings);
  const looked: PullsLookedAt = {
    found,
    timesS: trace.groups[0].timesS,
    placement: 'inline',
    restLoad: { value: 0, u: 0.1 },
    bodyWeightN: null,
    gapS: 0.05,
    ...change,
  };
  return pullIssues(looked, method, signal);
}
const codesOf = (trace: Trace, change: Partial<PullsLookedAt> = {}): IssueCode[] =>
  issuesOf(trace, change).map(({ code }) => code);

test('an ordinary recording has none', () => {
  expect(codesOf(madeTrace(made))).toEqual([]);
});

test('samples missing, slow and uneven', () => {
  const { timesS, samples } = madeSamples(made);
  const kept = timesS.map((timeS, i) => (timeS > 1 && timeS < 1.2 ? -1 : i)).filter((i) => i >= 0);
  const holed = traceOf(
    Float64Array.from(kept, (i) => timesS[i]),
    Float64Array.from(kept, (i) => samples[i]),
  );
  const [gap] = issuesOf(holed);
  expect(gap).toMatchObject({ code: 'samples-missing', severity: 'note' });
  expect([gap.fromS, gap.toS].map((timeS) => Math.round(10 * timeS))).toEqual([10, 12]);
  expect(codesOf(madeTrace({ ...made, sampleRateHz: 100 }))).toEqual(['coarse-rate']);
  expect(codesOf(madeTrace({ ...made, sampleRateHz: 50 }))).toEqual(['low-rate']);
  const uneven = timesS.map((timeS, i) => timeS + (i % 2 === 0 ? 0 : 0.0018));
  expect(codesOf(traceOf(uneven, samples))).toContain('uneven-sampling');
});

test("a force that is no person's, or another unit", () => {
  const { timesS, samples } = madeSamples(made);
  const grams = traceOf(
    timesS,
    samples.map((value) => 10 * value),
  );
  expect(issuesOf(grams)).toMatchObject([{ code: 'implausible-size', details: { most: 5000, unit: 'N' } }]);
});

test('the load at rest: changed by an effort, differing between efforts, tared away', () => {
  const step = madeTrace({ ...made, rest: (timeS) => (timeS > 7 ? 40 : 0) });
  expect(codesOf(step)).toEqual(['rest-load-changed']);
  const laid = madeTrace({ ...made, rest: (timeS) => (timeS > 13.5 ? 40 : 0) });
  expect(codesOf(laid)).toEqual(['rest-load-differs']);
  const plate = { placement: 'platform' } as const;
  expect(codesOf(madeTrace(made), plate)).toEqual(['tare-left-on']);
  expect(codesOf(madeTrace(made), { ...plate, restLoad: { value: 25, u: 1 } })).toEqual([]);
  expect(codesOf(madeTrace(made), { ...plate, restLoad: { value: 25, u: 1 }, bodyWeightN: 1000 })).toEqual([
    'tare-left-on',
  ]);
  // 25 +- 3 N may well be 30 N
  expect(codesOf(madeTrace(made), { ...plate, restLoad: { value: 25, u: 3 }, bodyWeightN: 1000 })).toEqual([]);
  expect(codesOf(madeTrace(made), { restLoad: { value: -40, u: 1 } })).toEqual(['tare-left-on']);
  expect(codesOf(madeTrace(made), { restLoad: null, ...plate })).toEqual([]);
});

test('a sign that the signal does not tell is said only where something was pulled', () => {
  const found = findEfforts(madeTrace(made), { polarity: 'find' }, strengthSettings);
  const unclear = { ...found, polarity: { sign: 1, clear: false } } as const;
  expect(codesOf(madeTrace(made), { found: unclear })).toEqual(['polarity-unclear']);
  expect(codesOf(madeTrace(made), { found: { ...unclear, efforts: [], others: [] } })).toEqual([]);
});

test('a sensor at its limit, at the place of the effort', () => {
  const { timesS, samples } = madeSamples(made);
  const cut = traceOf(
    timesS,
    samples.map((value) => Math.min(value, 810)),
  );
  const issues = issuesOf(cut);
  expect(issues.map(({ code }) => code)).toEqual(['saturated']);
  expect(issues[0].fromS).toBeGreaterThan(15);
});
