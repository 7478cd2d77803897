import {
  changeBetween,
  InputError,
  type Reliability,
  testIdentity,
  trendOver,
  type VisitChange,
  type VisitResult,
} from '@surae/analysis';
import { FLOOR, INCLINE_10 } from '@surae/shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../../support/close.ts';
import { judged } from '../../support/detected-set.ts';
import { madeNoise } from '../../support/made-pull.ts';
import { runs } from '../../support/runs.ts';

const report = judged({ heightsM: Array<number>(6).fill(0.1) });
const board = testIdentity(report, INCLINE_10, { source: 'person' });

const visit = (day: number, value: number | null, changes: Partial<VisitResult> = {}): VisitResult => ({
  day,
  side: 'right',
  value,
  unit: '1',
  convention: 'scored repetitions',
  identity: board,
  blocks: [],
  testsBefore: 3,
  inFlare: false,
  ...changes,
});

const withError = (standardError: number, kind: Reliability['source']['kind'] = 'published'): Reliability => ({
  scale: 'natural',
  standardError,
  unit: '1',
  source: { kind, id: 'r', citation: 'Hébert-Losier 2017', group: 'healthy', people: 32 },
});

function changed(found: ReturnType<typeof changeBetween>): VisitChange {
  if (found.kind !== 'change') throw new Error(`side by side: ${found.reasons.join(', ')}`);
  return found;
}

describe('worked case: 19 repetitions, eight weeks later 24', () => {
  test('with the published error of 2.25 the change is possible, and the source is in the result', () => {
    const found = changed(changeBetween(visit(0, 19), visit(56, 24), withError(2.25)));
    expect(found).toMatchObject({
      detectable: { zone: 'possible' },
      real: 'cannot_tell',
      reliability: { kind: 'published', citation: 'Hébert-Losier 2017', people: 32 },
      cautions: ['detectable-is-not-important', 'not-from-people-in-pain'],
    });
    expect([found.change.value, found.change.low, found.change.high]).toBeCloseToEach([5, -1.24, 11.24], {
      rtol: 0,
      atol: 0.005,
    });
  });

  test('the verdict hangs on which error is used', () => {
    expect(changed(changeBetween(visit(0, 19), visit(56, 24), withError(6.7))).detectable.zone).toBe('cannot-tell');
    expect(changed(changeBetween(visit(0, 19), visit(56, 24), withError(1.5))).real).toBe('yes');
  });
});

test('a small change never proves that there is none', () => {
  expect(changed(changeBetween(visit(0, 20), visit(7, 20), withError(2.25))).real).toBe('cannot_tell');
});

test('the cautions: practice, a flare at the beginning, and what was not told', () => {
  const cautions = (before: Partial<VisitResult>, after: Partial<VisitResult>) =>
    changed(changeBetween(visit(0, 19, before), visit(7, 27, after), withError(2.25, 'own-clinic'))).cautions.slice(1);
  expect(cautions({}, {})).toEqual([]);
  expect(cautions({}, { testsBefore: 1 })).toEqual(['first-retest']);
  expect(cautions({}, { testsBefore: null })).toEqual(['tests-before-not-known']);
  expect(cautions({ inFlare: true }, {})).toEqual(['baseline-in-flare']);
  expect(cautions({ inFlare: null }, {})).toEqual(['baseline-not-known']);
});

test.each([
  ['different-test', { identity: testIdentity(report, FLOOR, { source: 'person' }) }],
  ['different-test', { identity: { ...board, source: null } }],
  ['different-side', { side: 'left' }],
  ['different-unit', { unit: 'J' }],
  ['different-convention', { convention: 'attempted repetitions' }],
  ['value-missing', { value: null }],
  ['value-missing', { value: Number.NaN }],
  ['set-not-interpreted', { blocks: ['ended-for-pain'] }],
  ['not-in-time-order', { day: 56 }],
  ['not-in-time-order', { day: Number.NaN }],
] satisfies [string, Partial<VisitResult>][])('%s: side by side, and no change', (reason, change) => {
  const found = changeBetween(visit(0, 19, change), visit(56, 24), withError(2.25));
  expect(found).toMatchObject({ kind: 'side-by-side', reasons: [reason] });
  expect(Object.keys(found).sort()).toEqual(['differences', 'kind', 'reasons', 'visits']);
});

test('tests that differ come with the list of what differs', () => {
  const floor = testIdentity(report, FLOOR, { source: 'person' });
  expect(changeBetween(visit(0, 19, { identity: floor }), visit(56, 24), withError(2.25))).toMatchObject({
    differences: [
      { feature: 'parameter.surface', before: 'floor', after: 'incline10' },
      { feature: 'protocol', before: 'single-leg.floor', after: 'single-leg.incline10' },
    ],
  });
});

test('without an error of measurement, or with one in another unit, there is no change', () => {
  expect(changeBetween(visit(0, 19), visit(56, 24), null)).toMatchObject({ reasons: ['no-reliability'] });
  const joules = { ...withError(419), unit: 'J' };
  expect(changeBetween(visit(0, 19), visit(56, 24), joules)).toMatchObject({ reasons: ['reliability-in-other-unit'] });
});

describe('an error of the logarithm, for a spread that grows with the value', () => {
  const log = (standardError: number): Reliability => ({ ...withError(standardError), scale: 'log' });

  test('13.1 % on 1000 J: 1440 J is the first that exceeds the wobble, exp(1.96 sqrt 2 x 0.131) = 1.438', () => {
    const to = (value: number) => changed(changeBetween(visit(0, 1000), visit(56, value), log(0.131)));
    expect(to(1440).detectable.zone).toBe('likely-real');
    expect(to(1436).detectable.zone).toBe('possible');
    const { ratio, change } = to(1436);
    expect([ratio!.value, ratio!.low, ratio!.high]).toBeCloseToEach([1.436, 0.99878, 2.06463], { rtol: 0, atol: 1e-4 });
    expect([change.value, change.low, change.high]).toBeCloseToEach([436, -1.22, 1064.63], { rtol: 0, atol: 0.1 });
  });

  test('a common scale changes no verdict, and going back inverts the ratio', () => {
    const value = fc.double({ min: 1, max: 1e3, noNaN: true });
    const scaled = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(value, value, scaled, fc.double({ min: 0.01, max: 0.3, noNaN: true }), (a, b, by, error) => {
        const there = changed(changeBetween(visit(0, a), visit(7, b), log(error)));
        fc.pre([1.28, 1.96].every((limit) => Math.abs(Math.abs(there.detectable.index) - limit) > 1e-6));
        const larger = changed(changeBetween(visit(0, a * by), visit(7, b * by), log(error)));
        expect(larger.detectable.zone).toBe(there.detectable.zone);
        const back = changed(changeBetween(visit(0, b), visit(7, a), log(error)));
        expect(back.detectable.zone).toBe(there.detectable.zone);
        expect([back.ratio!.low, back.ratio!.high]).toBeCloseToEach([1 / there.ratio!.high, 1 / there.ratio!.low], {
          rtol: 1e-9,
          atol: 0,
        });
      }),
      runs(100, 2000),
    );
  });

  test('zero has no logarithm; on the natural scale it is a result like any other', () => {
    expect(changeBetween(visit(0, 0), visit(7, 10), log(0.1))).toMatchObject({ reasons: ['value-not-positive'] });
    expect(changed(changeBetween(visit(0, 0), visit(7, 10), withError(2.25)))).toMatchObject({
      real: 'yes',
      ratio: null,
    });
  });
});

describe('three visits and more', () => {
  test('Hollander, Wolfe & Chicken, example 9.1, read as weeks: -0.05625 a week', () => {
    const found = trendOver([1.26, 1.27, 1.12, 1.16, 1.03].map((value, i) => visit(7 * (i + 1), value)));
    expect(found.kind === 'trend' && [found.slopePerWeek.value]).toBeCloseToEach([-0.05625], { rtol: 1e-9, atol: 0 });
  });

  test('three or four points have a slope and no interval, so no direction either', () => {
    const found = trendOver([10, 20, 30].map((value, i) => visit(7 * i, value)));
    expect(found).toMatchObject({ slopePerWeek: { value: 10, low: null, high: null }, moves: 'cannot_tell' });
  });

  test('six points on a line move; six that go up and down cannot be told', () => {
    expect(trendOver([10, 12, 14, 16, 18, 20].map((value, i) => visit(7 * i, value)))).toMatchObject({ moves: 'yes' });
    expect(trendOver([20, 18, 16, 14, 12, 10].map((value, i) => visit(7 * i, value)))).toMatchObject({ moves: 'yes' });
    expect(trendOver([10, 14, 9, 13, 10, 12].map((value, i) => visit(7 * i, value)))).toMatchObject({
      moves: 'cannot_tell',
    });
  });

  test('one visit that was tested otherwise, or that is not interpreted, keeps the line from being drawn', () => {
    const visits = [10, 12, 14, 16].map((value, i) => visit(7 * i, value));
    const odd = { ...visits[1], identity: testIdentity(report, FLOOR, { source: 'person' }) };
    const found = trendOver([visits[0], odd, visits[2], visits[3]]);
    expect(found).toMatchObject({ kind: 'side-by-side', reasons: ['different-test'] });
    expect(found.kind === 'side-by-side' && found.differences).toHaveLength(2);
    const stopped: VisitResult = { ...visits[1], blocks: ['censored'] };
    expect(trendOver([visits[0], stopped, visits[2]])).toMatchObject({ reasons: ['set-not-interpreted'] });
    expect(trendOver([visits[0], visits[2], visits[1]])).toMatchObject({ reasons: ['not-in-time-order'] });
  });

  test('the cautions are those of the first two', () => {
    const visits = [visit(0, 10, { inFlare: true }), visit(7, 12, { testsBefore: 1 }), visit(14, 14)];
    expect(trendOver(visits)).toMatchObject({
      cautions: ['detectable-is-not-important', 'first-retest', 'baseline-in-flare'],
    });
  });

  test('two visits are no course', () => {
    expect(() => trendOver([visit(0, 10), visit(7, 12)])).toThrow(InputError);
  });
});

describe('forces that were counted by a calibration', () => {
  const newton = (day: number, value: number, calibration: string | null, relativeU: number | null): VisitResult =>
    visit(day, value, { unit: 'N', convention: 'net force', scale: { calibration, relativeU } });
  const error = (scale: Reliability['scale'], standardError: number): Reliability => ({
    ...withError(standardError),
    scale,
    unit: 'N',
  });

  test('one calibration: its share of the change, and nothing in the ratio', () => {
    const [before, after] = [newton(0, 800, 'a', 0.1), newton(60, 1000, 'a', 0.1)];
    const natural = changed(changeBetween(before, after, error('natural', 30)));
    expect([natural.scale, natural.standardError]).toEqual(['shared', 30]);
    // 30 N twice and 10 % of 200 N
    expect(natural.change.high - 200).toBeCloseTo(1.96 * Math.hypot(30, 30, 20), 9);
    const log = changed(changeBetween(before, after, error('log', 0.05)));
    expect(log.ratio!.high).toBeCloseTo(1.25 * Math.exp(1.96 * Math.SQRT2 * 0.05), 9);
    expect(log.change.high - 200).toBeCloseTo(Math.hypot(800 * log.ratio!.high - 1000, 1.96 * 20), 9);
  });

  test('two calibrations: both count, and the change that can be told is a larger one', () => {
    const [before, after] = [newton(0, 800, 'a', 0.03), newton(60, 1000, 'b', 0.04)];
    const natural = changed(changeBetween(before, after, error('natural', 30)));
    expect(natural.scale).toBe('apart');
    expect(natural.detectable.at95).toBeCloseTo(1.96 * Math.hypot(30, 30, 24, 40), 9);
    const log = changed(changeBetween(before, after, error('log', 0.05)));
    expect(Math.log(log.ratio!.high / 1.25)).toBeCloseTo(1.96 * Math.hypot(0.05, 0.05, 0.03, 0.04), 9);
  });

  test('an error that nobody knows is said; repetitions have none', () => {
    const open = changed(changeBetween(newton(0, 800, 'a', null), newton(60, 1000, 'a', null), error('natural', 30)));
    expect(open.cautions).toContain('scale-not-known');
    expect(open.detectable.at95).toBeCloseTo(1.96 * Math.SQRT2 * 30, 9);
    const counts = changed(changeBetween(visit(0, 19), visit(56, 24), withError(2.25)));
    expect([counts.scale, counts.cautions.includes('scale-not-known')]).toEqual(['none', false]);
  });

  test('a course: one calibration turns its slope, a new one in the middle widens it further', () => {
    const values = [900, 912, 919, 931, 940, 952];
    const trend = (names: readonly string[], relativeU: number) => {
      const found = trendOver(values.map((value, i) => newton(7 * i, value, names[i], relativeU)));
      if (found.kind !== 'trend') throw new Error('side by side');
      return found;
    };
    const one = trend(Array<string>(6).fill('a'), 0.02);
    const exact = trend(Array<string>(6).fill('a'), 0);
    const { value, high } = exact.slopePerWeek;
    expect(one.slopePerWeek.high! - value).toBeCloseTo(Math.hypot(high! - value, 1.96 * 0.02 * value), 9);
    const two = trend(['a', 'a', 'a', 'b', 'b', 'b'], 0.02);
    expect(two.slopePerWeek.low!).toBeLessThan(one.slopePerWeek.low!);
    expect([exact.moves, two.moves]).toEqual(['yes', 'cannot_tell']);
  });

  test('drawn a thousand times, the change holds the true one in 95 %', () => {
    const normal = madeNoise(29, 1);
    const [trueBefore, trueAfter, own, r] = [800, 1000, 20, 0.05];
    for (const names of [
      ['a', 'a'],
      ['a', 'b'],
    ] as const) {
      let held = 0;
      const draws = 2000;
      for (let i = 0; i < draws; i++) {
        const first = r * normal();
        const second = names[0] === names[1] ? first : r * normal();
        const before = newton(0, trueBefore * (1 + first) + own * normal(), names[0], r);
        const after = newton(60, trueAfter * (1 + second) + own * normal(), names[1], r);
        const { change } = changed(changeBetween(before, after, error('natural', own)));
        if (change.low <= trueAfter - trueBefore && change.high >= trueAfter - trueBefore) held++;
      }
      expect(Math.abs(held / draws - 0.95), names.join()).toBeLessThan(0.02);
    }
  });
});
