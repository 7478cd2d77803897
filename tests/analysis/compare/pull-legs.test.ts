import {
  type LegsOfVisit,
  type OwnReliabilities,
  type PullFinding,
  pullLegsOfVisit,
  pullOverVisits,
  type SideBlock,
  type TestedPull,
  type VisitPulls,
} from '@surae/analysis';
import { STRAIGHT_PULL } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import '../../support/close.ts';
import { visitLegs, WOMAN } from '../../support/tested-leg.ts';
import { testedPull } from '../../support/tested-pull.ts';

const left = testedPull('left', 1425);
const right = testedPull('right', 1150, { sore: true });

function visit(one: TestedPull | null, other: TestedPull | null, changes: Partial<VisitPulls> = {}): VisitPulls {
  return { ...visitLegs(null, null), person: WOMAN, ...changes, legs: { left: one, right: other } };
}

/** The clinic's own error of 5 %, from enough pairs to be used as it is. */
const FIVE_PERCENT: OwnReliabilities = {
  'isometric.seated': {
    standardError: 0.05,
    standardErrorUpper80: 0.055,
    scale: 'log',
    unit: 'N',
    pairs: 30,
    source: { id: 'own', citation: 'own repeated tests', group: 'own people' },
  },
};

function codes({ comparison }: LegsOfVisit<PullFinding>): readonly SideBlock[] {
  return comparison.kind === 'blocked' ? comparison.blocks.map(({ code }) => code) : [];
}

describe('worked case, seated: 1425 and 1150 N net over a resting leg of 85 N', () => {
  test('at 5 % the ratio is 81 % (70 to 93), lower with 0.94', () => {
    const { comparison, zone } = pullLegsOfVisit(visit(left, right), FIVE_PERCENT);
    if (comparison.kind === 'blocked') throw new Error(comparison.blocks.map(({ code }) => code).join(', '));
    const { ratio, underLine, unit } = comparison;
    expect([ratio.value, ratio.low, ratio.high].map((one) => Math.round(100 * one))).toEqual([81, 70, 93]);
    expect(underLine[0]).toMatchObject({ side: 'right', verdict: 'yes' });
    expect(underLine[0].probability.toFixed(2)).toBe('0.94');
    expect(unit).toBe('N');
    expect(zone).toBe('likely-real');
  });

  test('the error of one calibration leaves the ratio as it was, those of two widen it', () => {
    const counted = (pull: TestedPull, calibrationId: string, r: number): TestedPull => {
      const net = pull.report.score.net!;
      const score = { ...pull.report.score, net: { value: net.value, u: Math.hypot(net.u, r * net.value) } };
      return { ...pull, report: { ...pull.report, score, calibrationId, calibrationRelativeU: r } };
    };
    const logU = (one: TestedPull, other: TestedPull) => {
      const { comparison } = pullLegsOfVisit(visit(one, other), FIVE_PERCENT);
      if (comparison.kind === 'blocked') throw new Error('blocked');
      return [comparison.scale, comparison.ratio.logU] as const;
    };
    const [exact] = [logU(counted(left, 'a', 0), counted(right, 'a', 0))[1]];
    const [shared, apart] = ['a', 'b'].map((name) => logU(counted(left, 'a', 0.03), counted(right, name, 0.03)));
    expect([shared[0], apart[0]]).toEqual(['shared', 'apart']);
    expect(shared[1]).toBeCloseTo(exact, 12);
    expect(apart[1]).toBeCloseTo(Math.hypot(exact, 0.03, 0.03), 12);
    const change = pullOverVisits(
      [
        { day: 0, pull: counted(left, 'a', 0.03) },
        { day: 50, pull: counted(left, 'b', 0.03) },
      ],
      FIVE_PERCENT,
    ).changes[0].outcome;
    expect(change).toMatchObject({ kind: 'change', scale: 'apart' });
  });

  test('a report of an earlier version names no calibration, and that is said', () => {
    const { calibrationId, ...report } = left.report;
    expect(calibrationId).toBeNull();
    const old = { ...left, report: report as typeof left.report };
    const { comparison } = pullLegsOfVisit(visit(old, right), FIVE_PERCENT);
    expect(comparison).toMatchObject({ kind: 'ratio', scale: 'not-known' });
    expect(comparison.kind === 'ratio' && comparison.cautions).toContain('scale-not-known');
  });

  test('by the published error of the plate, 42.6 N, the interval is 73 to 89 %, and every published error agrees', () => {
    const found = pullLegsOfVisit(visit(left, right), {});
    if (found.comparison.kind === 'blocked') throw new Error(codes(found).join(', '));
    // exp(+-1.96 sqrt((42.6 / 1425)^2 + (42.6 / 1150)^2)) = 0.911 to 1.098
    const { low, high } = found.comparison.ratio;
    expect([low, high]).toBeCloseToEach([0.7351, 0.8859], { rtol: 0, atol: 0.0005 });
    expect(found.underOthers.map(({ reliability, lower }) => [reliability.source.id, lower])).toEqual([
      ['reliability.peak-force.seated-percent', 'yes'],
    ]);
  });

  test('the re-test of 1500 N is 75 N more against 118 N: it cannot be told', () => {
    const { changes } = pullOverVisits(
      [
        { day: 56, pull: testedPull('left', 1500) },
        { day: 0, pull: left },
      ],
      {},
    );
    expect(changes).toHaveLength(1);
    const [{ outcome, underOthers, hangsOnReliability }] = changes;
    if (outcome.kind === 'side-by-side') throw new Error(outcome.reasons.join(', '));
    expect([outcome.change.value, outcome.detectable.at95]).toBeCloseToEach([75, 118], { rtol: 0, atol: 0.5 });
    expect(outcome).toMatchObject({ detectable: { zone: 'cannot-tell' }, real: 'cannot_tell', unit: 'N' });
    expect(underOthers.map(({ zone }) => zone)).toEqual(['cannot-tell']);
    expect(hangsOnReliability).toBe(false);
  });

  test('a cell over the thigh is never set against the plate, on one visit or over two', () => {
    const cell = testedPull('right', 1150, { sore: true }, { placement: 'inline' });
    expect(codes(pullLegsOfVisit(visit(left, cell), {}))).toEqual([
      'different-protocol',
      'different-placement',
      'different-convention',
    ]);
    const { changes } = pullOverVisits(
      [
        { day: 0, pull: right },
        { day: 56, pull: cell },
      ],
      {},
    );
    expect(changes[0]).toMatchObject({
      outcome: {
        kind: 'side-by-side',
        reasons: ['different-test', 'different-convention'],
        differences: [{ feature: 'placement', before: 'platform', after: 'inline' }],
      },
    });
  });
});

test.each([
  [{ restS: 60 }, ['short-rest']],
  [{ sameDay: null }, ['day-not-recorded']],
  [{ first: null }, ['order-not-recorded']],
  [{ person: { ...WOMAN, nerveSigns: true } }, ['nerve-signs']],
  [{ blocks: ['several-sets'] }, ['several-sets']],
] as const)('case %#: what stands against a ratio of counts stands against one of forces', (changes, expected) => {
  expect(codes(pullLegsOfVisit(visit(left, right, changes), {}))).toEqual(expected);
});

test('another position is another protocol, and a leg without a recording has no value', () => {
  const standing = testedPull('right', 1150, { sore: true }, { protocol: STRAIGHT_PULL });
  expect(codes(pullLegsOfVisit(visit(left, standing), {}))).toEqual(['different-protocol']);
  expect(codes(pullLegsOfVisit(visit(left, null), {}))).toEqual(['value-missing']);
});
