import {
  type BlockedBy,
  type ComparedReport,
  compareSets,
  compareValues,
  InputError,
  type MeasuredValue,
  type NoSideRatio,
  type PairCircumstances,
  type RatioRules,
  ratioDirection,
  type SideBlock,
  type SideComparison,
  type SideRatio,
} from '@surae/analysis';
import { COMPARISON_RULES } from '@surae/shared';
import fc from 'fast-check';
import { describe, expect, expectTypeOf, test } from 'vitest';
import '../../support/close.ts';
import { madeReport, sureCount } from '../../support/made-visit.ts';
import { runs } from '../../support/runs.ts';

const rules: RatioRules = {
  ratioLine: COMPARISON_RULES.ratioLine.value,
  plainNoMost: COMPARISON_RULES.plainNoMost.value,
  plainYesLeast: COMPARISON_RULES.plainYesLeast.value,
};
const plain = { oneSidedSport: false, legLengthRaise: false, ageYears: 38 };
const full = { good: 'yes', signs: ['height-drop'], reason: 'signs-of-fatigue' } as const;
const board = { id: 'single-leg.incline10', version: '1', fingerprint: 'f' };

const made = madeReport('left', {});
const ends = new Map(
  (['fatigue', 'pain', 'cap', null] as const).map((reason) => [reason, madeReport('left', {}, reason).end]),
);
const report = (side: 'left' | 'right', scored: number): ComparedReport => ({
  ...made,
  side,
  count: { ...made.count, ...sureCount(scored) },
  effort: full,
  protocol: board,
});
const reps = (value: number | null, u: number | null = 2.25): MeasuredValue => ({
  value,
  u,
  unit: '1',
  convention: 'scored repetitions',
});
const force = (value: number): MeasuredValue => ({ value, u: 0.05 * value, unit: 'N', convention: 'net force' });
const rightSore: PairCircumstances = {
  sore: { left: false, right: true },
  first: 'left',
  restS: 120,
  sameDay: true,
  sameSource: true,
  earlierInjury: { left: false, right: false },
  nerveSigns: false,
};

function codesOf(comparison: SideComparison): readonly SideBlock[] {
  return comparison.kind === 'blocked' ? comparison.blocks.map(({ code }) => code) : [];
}

function ratioOf(comparison: SideComparison): SideRatio {
  if (comparison.kind === 'blocked') throw new Error(`blocked: ${codesOf(comparison).join(', ')}`);
  return comparison;
}

test('without asking for the kind no ratio can be read: the blocked answer has no such field', () => {
  expectTypeOf<keyof NoSideRatio>().toEqualTypeOf<'kind' | 'blocks'>();
  expectTypeOf<keyof SideComparison>().toEqualTypeOf<'kind'>();
  expectTypeOf<NoSideRatio['blocks']>().toEqualTypeOf<readonly [BlockedBy, ...BlockedBy[]]>();
});

test('worked case, one side sore: left 27, right 19, error 2.25 is 70 % (53 to 93), lower with 0.96', () => {
  const values = { left: reps(27), right: reps(19) };
  const found = ratioOf(
    compareSets({ left: report('left', 27), right: report('right', 19) }, values, rightSore, plain, rules),
  );
  expect(found.direction).toEqual({ over: 'right', under: 'left', why: 'sore-over-other' });
  expect([found.ratio.value, found.ratio.low, found.ratio.high].map((one) => Math.round(100 * one))).toEqual([
    70, 53, 93,
  ]);
  expect(found.difference.value).toBe(-8);
  expect([found.difference.low, found.difference.high]).toBeCloseToEach([-14.24, -1.76], { rtol: 0, atol: 0.005 });
  expect(found.underLine[0]).toMatchObject({ side: 'right', verdict: 'yes' });
  expect(found.underLine[0].probability.toFixed(2)).toBe('0.96');
  expect(found.underLine[1]).toMatchObject({ side: 'left', verdict: 'no' });
  expect(found).toMatchObject({ formula: 'log-ratio-1', line: 0.9, unit: '1', cautions: ['other-side-may-be-low'] });
});

test('the same traces with an error of 6.7: 27 is over three errors, the ratio stands and its verdict falls', () => {
  const values = { left: reps(27, 6.7), right: reps(19, 6.7) };
  const found = ratioOf(
    compareSets({ left: report('left', 27), right: report('right', 19) }, values, rightSore, plain, rules),
  );
  expect(found.underLine[0].verdict).toBe('cannot_tell');
  expect(found.cautions).toContain('interval-holds-equal');
});

test('worked case, both sides sore, one stopped for pain: no ratio, both reasons', () => {
  const left = { ...report('left', 9), end: ends.get('pain')! };
  const both = { ...rightSore, sore: { left: true, right: true } };
  const values = { left: reps(9), right: reps(16) };
  expect(codesOf(compareSets({ left, right: report('right', 16) }, values, both, plain, rules))).toEqual([
    'both-sides-sore',
    'ended-for-pain',
  ]);
});

test('worked case, isometric: 1425 and 1150 N net at 5 % is 81 % (70 to 93), lower with 0.94; gross beside net is refused', () => {
  const values = { left: force(1425), right: force(1150) };
  const found = ratioOf(compareValues(values, [], ratioDirection(rightSore.sore), plain, rules));
  expect([found.ratio.value, found.ratio.low, found.ratio.high].map((one) => Math.round(100 * one))).toEqual([
    81, 70, 93,
  ]);
  expect(found.underLine[0].probability.toFixed(2)).toBe('0.94');
  expect(found.underLine[0].verdict).toBe('yes');
  const gross = { ...values, right: { ...force(1235), convention: 'gross force' } };
  expect(codesOf(compareValues(gross, [], ratioDirection(rightSore.sore), plain, rules))).toEqual([
    'different-convention',
  ]);
});

describe('edges: not computable, never zero', () => {
  const right = ratioDirection(rightSore.sore);
  const compare = (left: MeasuredValue, other: MeasuredValue) =>
    compareValues({ left, right: other }, [], right, plain, rules);

  test.each([
    [reps(0), reps(10), 'value-not-positive'],
    [reps(0), reps(0), 'value-not-positive'],
    [reps(null), reps(10), 'value-missing'],
    [reps(20), reps(null), 'value-missing'],
    [reps(20, null), reps(10), 'uncertainty-missing'],
    [reps(6), reps(10), 'within-error'],
  ] as const)('case %#', (left, other, block) => {
    expect(codesOf(compare(left, other))).toEqual([block]);
  });

  test('above 100 % is allowed', () => {
    expect(ratioOf(compare(reps(20), reps(24))).ratio.value).toBe(1.2);
  });

  test('a small value of the sore side is the finding; where neither is sore it is a reason', () => {
    expect(compare(reps(20), reps(3)).kind).toBe('ratio');
    const neither = ratioDirection({ left: false, right: false });
    expect(codesOf(compareValues({ left: reps(20), right: reps(3) }, [], neither, plain, rules))).toEqual([
      'within-error',
    ]);
  });

  test('an error beyond all measure gives no infinite interval', () => {
    expect(codesOf(compare(reps(1e6), reps(1e-3, 1e3)))).toEqual(['within-error']);
    expect(codesOf(compare(reps(1, 0.3), reps(1e308, 3e307)))).toEqual(['within-error']);
  });

  test('a line that is none is refused', () => {
    for (const ratioLine of [0, 1.1, Number.NaN]) {
      expect(() =>
        compareValues({ left: reps(20), right: reps(20) }, [], right, plain, { ...rules, ratioLine }),
      ).toThrow(InputError);
    }
  });
});

test.each([
  [true, false, 'left', 'sore-over-other'],
  [false, true, 'right', 'sore-over-other'],
  [false, false, 'left', 'left-over-right'],
  [true, true, 'left', 'left-over-right'],
  [null, true, 'left', 'left-over-right'],
  [true, null, 'left', 'left-over-right'],
] as const)('sore %s and %s: %s stands above, %s', (left, right, over, why) => {
  expect(ratioDirection({ left, right })).toEqual({ over, under: over === 'left' ? 'right' : 'left', why });
});

const usable = fc.record({
  value: fc.double({ min: 5, max: 50, noNaN: true }),
  u: fc.double({ min: 0.05, max: 1.5, noNaN: true }),
});

test('each reason comes with what would lift it', () => {
  const bothSore = { ...rightSore, sore: { left: true, right: true } };
  const found = compareSets(
    { left: report('left', 27), right: report('right', 19) },
    { left: reps(27), right: reps(null) },
    bothSore,
    plain,
    rules,
  );
  expect(found.kind === 'blocked' && found.blocks.map(({ code, unblock }) => [code, unblock.text])).toEqual([
    ['both-sides-sore', 'Follow each leg against its own earlier tests until one is no longer sore.'],
    ['value-missing', 'Measure the leg.'],
  ]);
});

test('a leg with an earlier injury that a clinician confirmed is compared with, and the ratio says so', () => {
  const reports = { left: report('left', 27), right: report('right', 19) };
  const values = { left: reps(27), right: reps(19) };
  const compared = (left: PairCircumstances['earlierInjury']['left']) =>
    compareSets(reports, values, { ...rightSore, earlierInjury: { left, right: true } }, plain, rules);
  expect(ratioOf(compared({ monthsAgo: 24, confirmed: true })).cautions).toEqual([
    'other-side-may-be-low',
    'earlier-injury-confirmed',
  ]);
  expect(ratioOf(compared(false)).cautions).toEqual(['other-side-may-be-low']);
  expect(codesOf(compared({ monthsAgo: 24, confirmed: null }))).toEqual(['earlier-injury-not-confirmed']);
});

test('ratios that the clinic repeated give the interval and the verdicts, and the result says so', () => {
  const source = { id: 'own', citation: 'this clinic', group: 'people in pain' };
  const own = { logError: 0.05, logErrorUpper: 0.06, pairs: 40, source };
  const reports = { left: report('left', 27), right: report('right', 21) };
  const values = { left: reps(27), right: reps(21) };
  const bySides = ratioOf(compareSets(reports, values, rightSore, plain, rules));
  const byOwn = ratioOf(compareSets(reports, values, rightSore, plain, rules, own));
  expect(bySides.error).toMatchObject({ from: 'sides-independent', own: 'none', logU: bySides.ratio.logU });
  expect(byOwn.error).toMatchObject({ from: 'own-ratios', own: 'used', pairs: 40, logU: 0.05 });
  expect(byOwn.ratio.value).toBe(bySides.ratio.value);
  const reach = Math.exp(1.96 * 0.05);
  expect([byOwn.ratio.low, byOwn.ratio.high]).toBeCloseToEach([21 / 27 / reach, (21 / 27) * reach], {
    rtol: 1e-12,
    atol: 0,
  });
  // ln(0.9 / (21 / 27)) / 0.05 = 2.918: 0.9982 by any table of the normal distribution
  expect(byOwn.underLine[0].probability).toBeCloseTo(0.9982, 4);
  expect([bySides.underLine[0].verdict, byOwn.underLine[0].verdict]).toEqual(['yes', 'yes']);
  expect(byOwn.difference).toEqual(bySides.difference);
  const few = ratioOf(compareSets(reports, values, rightSore, plain, rules, { ...own, pairs: 14 }));
  expect(few.ratio).toEqual(bySides.ratio);
  expect(few.error).toMatchObject({ from: 'sides-independent', own: 'too-few-pairs', pairs: 14 });
});

test('an own error beyond all measure gives no infinite interval', () => {
  const source = { id: 'own', citation: 'this clinic', group: 'people in pain' };
  const own = { logError: 500, logErrorUpper: 600, pairs: 40, source };
  const values = { left: reps(27), right: reps(21) };
  const direction = ratioDirection(rightSore.sore);
  expect(codesOf(compareValues(values, [], direction, plain, rules, own))).toEqual(['within-error']);
});

test('a rest that is no number is not known', () => {
  const found = compareSets(
    { left: report('left', 27), right: report('right', 19) },
    { left: reps(27), right: reps(19) },
    { ...rightSore, restS: Number.NaN },
    plain,
    rules,
  );
  expect(codesOf(found)).toEqual(['rest-not-recorded']);
});

const ownRatios = {
  logError: 0.08,
  logErrorUpper: 0.1,
  pairs: 20,
  source: { id: 'own', citation: 'this clinic', group: 'people in pain' },
};

test('another unit of the values changes the difference alone', () => {
  fc.assert(
    fc.property(usable, usable, fc.constantFrom(0.001, 4.4482216, 1000), (one, other, by) => {
      const of = (scale: number, unit: string) => {
        const value = ({ value: number, u }: typeof one): MeasuredValue => ({
          ...reps(number * scale, u * scale),
          unit,
        });
        return ratioOf(
          compareValues({ left: value(one), right: value(other) }, [], ratioDirection(rightSore.sore), plain, rules),
        );
      };
      const [straight, scaled] = [of(1, 'N'), of(by, 'other')];
      const figures = ({ ratio, underLine }: SideRatio) => [
        ratio.value,
        ratio.low,
        ratio.high,
        ...underLine.map(({ probability }) => probability),
      ];
      expect(figures(scaled)).toBeCloseToEach(figures(straight), { rtol: 1e-9, atol: 1e-12 });
      expect([scaled.difference.value]).toBeCloseToEach([straight.difference.value * by], { rtol: 1e-9, atol: 1e-9 });
      expect(scaled.cautions).toEqual(straight.cautions);
    }),
    runs(100, 2000),
  );
});

test('calling the sides the other way round inverts the ratio where neither is sore, and leaves it where one is', () => {
  fc.assert(
    fc.property(usable, usable, fc.boolean(), fc.constantFrom(undefined, ownRatios), (one, other, sore, own) => {
      const [left, right] = [reps(one.value, one.u), reps(other.value, other.u)];
      const straight = ratioOf(
        compareValues({ left, right }, [], ratioDirection({ left: sore, right: false }), plain, rules, own),
      );
      const turned = ratioOf(
        compareValues(
          { left: right, right: left },
          [],
          ratioDirection({ left: false, right: sore }),
          plain,
          rules,
          own,
        ),
      );
      const { value, low, high } = straight.ratio;
      const expected = sore ? [value, low, high] : [1 / value, 1 / high, 1 / low];
      expect([turned.ratio.value, turned.ratio.low, turned.ratio.high]).toBeCloseToEach(expected, {
        rtol: 1e-12,
        atol: 0,
      });
      const verdicts = turned.underLine.map(({ verdict }) => verdict);
      expect(sore ? verdicts : verdicts.reverse()).toEqual(straight.underLine.map(({ verdict }) => verdict));
    }),
    runs(100, 2000),
  );
});
