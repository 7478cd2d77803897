import {
  assess,
  defaultSettings,
  type LegsOfVisit,
  legsOfVisit,
  type PersonFacts,
  type SideBlock,
  type TestedLeg,
  type VisitLegs,
} from '@surae/analysis';
import type { EndReason } from '@surae/shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runs } from '../../support/runs.ts';
import { steadyTaps } from '../../support/tapped.ts';
import { testedLeg, visitLegs, WOMAN } from '../../support/tested-leg.ts';

const { judging } = defaultSettings();
const compare = (visit: VisitLegs): LegsOfVisit => legsOfVisit(visit, {}, judging);

function codes({ comparison }: LegsOfVisit): readonly SideBlock[] {
  return comparison.kind === 'blocked' ? comparison.blocks.map(({ code }) => code) : [];
}

const sore = testedLeg('right', 19, { sore: true, painPeak: 3 });

describe('worked case, one leg sore: left 27, right 19', () => {
  const found = compare(visitLegs(testedLeg('left', 27), sore));

  test('right over left 70 % (53 to 93), lower with 0.96, and a difference beyond the usual wobble', () => {
    if (found.comparison.kind === 'blocked') throw new Error(codes(found).join(', '));
    const { ratio, direction, underLine } = found.comparison;
    expect([ratio.value, ratio.low, ratio.high].map((one) => Math.round(100 * one))).toEqual([70, 53, 93]);
    expect(direction).toMatchObject({ over: 'right', why: 'sore-over-other' });
    expect(underLine[0]).toMatchObject({ side: 'right', verdict: 'yes' });
    expect(underLine[0].probability.toFixed(2)).toBe('0.96');
    expect(found.zone).toBe('likely-real');
    expect(found.reliability?.source.id).toBe('reliability.repetitions.incline10');
  });

  test('with the error of 6.7 it cannot be told: the answer hangs on which error is believed', () => {
    expect(found.underOthers.map(({ reliability, lower, zone }) => [reliability.standardError, lower, zone])).toEqual([
      [2.07, 'yes', 'likely-real'],
      [6.7, 'cannot_tell', 'cannot-tell'],
    ]);
    expect(found.hangsOnReliability).toBe(true);
  });
});

test('legs far apart are far apart by every published error', () => {
  const found = compare(visitLegs(testedLeg('left', 60), testedLeg('right', 20, { sore: true })));
  expect(found.hangsOnReliability).toBe(false);
});

test('an error that alone stands against a ratio is named, and the answer hangs on it', () => {
  const found = compare(visitLegs(testedLeg('left', 19), testedLeg('right', 15, { sore: true })));
  expect(found.comparison.kind).toBe('ratio');
  expect(found.underOthers[1]).toMatchObject({ lower: null, zone: null });
  expect(found.hangsOnReliability).toBe(true);
});

test('worked case, both legs sore and one stopped for pain: both reasons, and nothing that a ratio could be read from', () => {
  const found = compare(
    visitLegs(testedLeg('left', 9, { sore: true, painPeak: 6 }, 'pain'), testedLeg('right', 16, { sore: true })),
  );
  expect(codes(found).slice(0, 2)).toEqual(['both-sides-sore', 'ended-for-pain']);
  expect(found).toMatchObject({ zone: null, reliability: null, underOthers: [], hangsOnReliability: null });
  expect(found.findings.left?.pain.toleratedRepetitions).toBe(9);
});

test('a leg without a set: its value is missing, the other one stands by itself', () => {
  const found = compare(visitLegs(testedLeg('left', 27), null, { blocks: ['side-uncertain'] }));
  expect(codes(found)).toEqual(['side-uncertain', 'value-missing']);
  expect(found.findings.right).toBeNull();
  expect(found.findings.left?.value.value).toBe(27);
});

test('a confirmed old injury of the leg that is compared with lets the ratio stand, with its caution', () => {
  const injured = (monthsAgo: number): TestedLeg =>
    testedLeg('left', 27, { earlierInjury: { monthsAgo, confirmed: true } });
  const { comparison } = compare(visitLegs(injured(30), sore));
  expect(comparison.kind === 'ratio' && comparison.cautions).toContain('earlier-injury-confirmed');
  expect(codes(compare(visitLegs(injured(6), sore)))).toEqual(['earlier-injury']);
});

test('another footwear is another way of testing; one that is not known of a leg stands against a ratio as well', () => {
  const wearing = (worn: string | null): TestedLeg => ({ ...sore, features: { footwearWorn: worn } });
  expect(codes(compare(visitLegs(testedLeg('left', 27), wearing('shoe'))))).toEqual(['different-protocol']);
  expect(codes(compare(visitLegs(testedLeg('left', 27), wearing(null))))).toEqual(['way-not-recorded']);
});

const VISIT_QUESTIONS = ['first', 'restS', 'sameDay', 'sameSource'] as const satisfies readonly (keyof VisitLegs)[];

/** Mostly the first, so that ratios are among the cases. */
function mostly<Value>(usual: Value, ...others: readonly Value[]): fc.Arbitrary<Value> {
  return fc.oneof({ weight: 12, arbitrary: fc.constant(usual) }, { weight: 1, arbitrary: fc.constantFrom(...others) });
}

function anyLeg(side: 'left' | 'right', soreMostly: boolean): fc.Arbitrary<TestedLeg> {
  return fc
    .record({
      scored: fc.integer({ min: 0, max: 60 }),
      end: mostly<EndReason | null>('fatigue', 'pain', 'cap', 'safety', 'fixed-count-done', null),
      sore: mostly<boolean | null>(soreMostly, true, false, null),
      earlierInjury: mostly<boolean | null>(false, true, null),
      worn: mostly<string | null>('barefoot', 'shoe', null),
    })
    .map(({ scored, end, worn, ...facts }) => ({
      ...testedLeg(side, scored, facts, end),
      features: { footwearWorn: worn },
    }));
}

const anyVisit = fc.record({
  left: fc.option(anyLeg('left', false), { freq: 12 }),
  right: fc.option(anyLeg('right', true), { freq: 12 }),
  first: mostly<'left' | 'right' | null>('left', 'right', null),
  restS: mostly<number | null>(120, 60, 300, null),
  sameDay: mostly<boolean | null>(true, false, null),
  sameSource: mostly<boolean | null>(true, false, null),
  nerveSigns: mostly<boolean | null>(false, true, null),
});

test('no visit whatever gives a ratio while anything that it needs is not known, and no blocked one holds a figure', () => {
  let ratios = 0;
  fc.assert(
    fc.property(anyVisit, ({ left, right, nerveSigns, ...changes }) => {
      const person: PersonFacts = { ...WOMAN, nerveSigns };
      const found = compare(visitLegs(left, right, { ...changes, person }));
      if (found.comparison.kind === 'blocked') {
        expect(Object.keys(found.comparison)).toEqual(['kind', 'blocks']);
        expect(found).toMatchObject({ zone: null, reliability: null, underOthers: [] });
        return;
      }
      ratios += 1;
      expect(nerveSigns).toBe(false);
      for (const key of VISIT_QUESTIONS) expect(changes[key]).not.toBeNull();
      for (const one of [left, right]) {
        expect(one?.facts.sore).not.toBeNull();
        expect(one?.report.end.reasonGiven).toBe('fatigue');
        expect(one?.features['footwearWorn']).not.toBeNull();
      }
      expect(left?.facts.sore === true && right?.facts.sore === true).toBe(false);
      expect(changes.restS).toBeGreaterThanOrEqual(120);
    }),
    runs(200, 5000),
  );
  expect(ratios).toBeGreaterThan(10);
});

describe('legs that were counted by hand', () => {
  const byHand = (side: 'left' | 'right', count: number) => {
    const leg = testedLeg(side, count);
    const context = { endReason: 'fatigue', exertion: 9 } as const;
    // the time from tap to tap grows: the one sign of fatigue that taps can show
    const request = { placement: 'hand', side, protocol: leg.protocol, subject: {}, context } as const;
    return { ...leg, report: assess(steadyTaps(count, 2, 0.005), request, defaultSettings()) };
  };

  test('are compared, with the error of a hand count in both', () => {
    const found = legsOfVisit(visitLegs(byHand('left', 18), byHand('right', 25)), {}, judging);
    const sensors = legsOfVisit(visitLegs(testedLeg('left', 18), testedLeg('right', 25)), {}, judging);
    if (found.comparison.kind !== 'ratio' || sensors.comparison.kind !== 'ratio') throw new Error('both have a ratio');
    expect(found.comparison.ratio.value).toBeCloseTo(18 / 25, 9);
    // two repetitions at 95 % are 1.02 as a standard uncertainty of each leg
    const own = 2 / 1.96;
    const logU = sensors.comparison.ratio.logU;
    expect(found.comparison.ratio.logU).toBeCloseTo(Math.hypot(logU, own / 18, own / 25), 9);
  });

  test('are never compared with a leg that a sensor saw', () => {
    const found = legsOfVisit(visitLegs(byHand('left', 18), testedLeg('right', 25)), {}, judging);
    if (found.comparison.kind !== 'blocked') throw new Error('a hand count and a sensor have no ratio');
    const codes = found.comparison.blocks.map(({ code }) => code);
    expect(codes).toContain('different-protocol');
    expect(codes).toContain('different-placement');
  });

  test('without a sign of fatigue in the taps too little is known of the effort', () => {
    const steady = (side: 'left' | 'right') => {
      const leg = byHand(side, 20);
      const request = { placement: 'hand', side, protocol: leg.protocol, subject: {} } as const;
      const context = { endReason: 'fatigue', exertion: 9 } as const;
      return { ...leg, report: assess(steadyTaps(20), { ...request, context }, defaultSettings()) };
    };
    const found = legsOfVisit(visitLegs(steady('left'), steady('right')), {}, judging);
    expect(found.comparison.kind === 'blocked' && found.comparison.blocks.map(({ code }) => code)).toEqual([
      'effort-unknown',
    ]);
  });
});
