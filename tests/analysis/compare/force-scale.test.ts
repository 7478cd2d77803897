import { compareValues, type ForceScale, type MeasuredValue, ratioDirection, type SideRatio } from '@surae/analysis';
import { COMPARISON_RULES } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import {
  differenceU,
  lacksScaleError,
  ownU,
  scaleBetween,
  scaleDifferenceU,
  scaleLogU,
} from '../../../packages/analysis/src/compare/force-scale.ts';
import { madeNoise } from '../../support/made-pull.ts';

const rules = {
  ratioLine: COMPARISON_RULES.ratioLine.value,
  plainNoMost: COMPARISON_RULES.plainNoMost.value,
  plainYesLeast: COMPARISON_RULES.plainYesLeast.value,
};
const plain = { oneSidedSport: false, legLengthRaise: false, ageYears: 38 };

function ratioOf(comparison: ReturnType<typeof compareValues>): SideRatio {
  if (comparison.kind === 'blocked') throw new Error(comparison.blocks.map(({ code }) => code).join(', '));
  return comparison;
}

const scale = (calibration: string | null, relativeU: number | null): ForceScale => ({ calibration, relativeU });

test('one calibration is shared only by its name and one error; no name is no other one', () => {
  const between: [ForceScale | undefined, ForceScale | undefined, string][] = [
    [undefined, undefined, 'none'],
    [scale('a', 0.003), scale('a', 0.003), 'shared'],
    [scale('a', null), scale('a', null), 'shared'],
    [scale('a', 0.003), scale('b', 0.003), 'apart'],
    [scale('a', 0.003), scale('a', 0.004), 'apart'],
    [scale(null, 0.003), scale(null, 0.003), 'apart'],
    [scale('a', 0.003), scale('a', null), 'not-known'],
    [scale(null, null), scale(null, null), 'not-known'],
    [scale('a', 0.003), undefined, 'not-known'],
  ];
  for (const [one, other, expected] of between) {
    expect(scaleBetween(one, other)).toBe(expected);
    expect(scaleBetween(other, one)).toBe(expected);
  }
  expect([
    lacksScaleError([undefined]),
    lacksScaleError([scale('a', 0.003)]),
    lacksScaleError([scale('a', null)]),
  ]).toEqual([false, false, true]);
});

test('by hand: 1000 N and 900 N at 3 and 4 per mille', () => {
  const [one, other] = [
    { value: 1000, u: 5, scale: scale('a', 0.003) },
    { value: 900, u: 5, scale: scale('b', 0.004) },
  ];
  expect(scaleLogU(one.scale, other.scale)).toBeCloseTo(0.005, 12);
  expect(scaleDifferenceU(one, other)).toBeCloseTo(Math.hypot(3, 3.6), 12);
  // of 5 N, 3 N are of the scale
  expect(ownU(one)).toBeCloseTo(4, 12);
  const same = { ...other, scale: one.scale };
  expect(scaleLogU(one.scale, same.scale)).toBe(0);
  expect(scaleDifferenceU(one, same)).toBeCloseTo(0.3, 12);
  // 4 N of the one, root(25 - 2.7^2) of the other, 0.3 N of the difference
  expect(differenceU(one, same)).toBeCloseTo(Math.sqrt(16 + (25 - 7.29) + 0.09), 12);
});

describe('forces that were counted by a calibration', () => {
  const newton = (value: number, calibration: string | null, relativeU: number | null): MeasuredValue => ({
    value,
    u: Math.hypot(20, (relativeU ?? 0) * value),
    unit: 'N',
    convention: 'net force',
    scale: { calibration, relativeU },
  });
  const direction = ratioDirection({ left: false, right: false });
  const compared = (left: MeasuredValue, right: MeasuredValue): SideRatio =>
    ratioOf(compareValues({ left, right }, [], direction, plain, rules));

  test('one calibration: the ratio is that of the legs themselves, the difference takes its share', () => {
    const found = compared(newton(1000, 'a', 0.05), newton(900, 'a', 0.05));
    const exact = compared(newton(1000, 'a', 0), newton(900, 'a', 0));
    expect(found.scale).toBe('shared');
    expect(found.ratio.logU).toBeCloseTo(exact.ratio.logU, 12);
    // 20 N of each leg and 5 % of 100 N
    expect((found.difference.high - found.difference.low) / 2).toBeCloseTo(1.96 * Math.hypot(20, 20, 5), 9);
    expect(found.cautions).not.toContain('scale-not-known');
  });

  test('two calibrations: both count, in ratio and difference, beside own repeated ratios as well', () => {
    const [left, right] = [newton(1000, 'a', 0.03), newton(900, 'b', 0.04)];
    const found = compared(left, right);
    expect(found.scale).toBe('apart');
    expect(found.ratio.logU).toBeCloseTo(Math.hypot(20 / 1000, 20 / 900, 0.05), 12);
    expect((found.difference.high - found.difference.low) / 2).toBeCloseTo(1.96 * Math.hypot(20, 20, 30, 36), 9);
    const source = { id: 'own', citation: 'own', group: 'own' };
    const own = { logError: 0.04, logErrorUpper: 0.05, pairs: 40, source };
    const byOwn = ratioOf(compareValues({ left, right }, [], direction, plain, rules, own));
    expect(byOwn.ratio.logU).toBeCloseTo(Math.hypot(0.04, 0.05), 12);
  });

  test('an error that nobody knows is said, and is in no figure', () => {
    const found = compared(newton(1000, null, null), newton(900, null, null));
    expect([found.scale, found.cautions.at(-1)]).toEqual(['not-known', 'scale-not-known']);
    expect(found.ratio.logU).toBeCloseTo(Math.hypot(20 / 1000, 20 / 900), 12);
    const uncounted = (value: number): MeasuredValue => ({ value, u: 20, unit: 'N', convention: 'net force' });
    expect(compared(uncounted(1000), uncounted(900))).toMatchObject({ scale: 'none' });
  });

  test('drawn a thousand times, the intervals hold the true ratio and difference in 95 %', () => {
    const normal = madeNoise(23, 1);
    const [trueLeft, trueRight, own, r] = [1000, 850, 15, 0.03];
    for (const [calibrations, share] of [
      [['a', 'a'], true],
      [['a', 'b'], false],
    ] as const) {
      const held = { ratio: 0, difference: 0 };
      const draws = 2000;
      for (let i = 0; i < draws; i++) {
        const first = r * normal();
        const second = share ? first : r * normal();
        const of = (value: number, error: number, name: string): MeasuredValue => {
          const read = value * (1 + error) + own * normal();
          return { ...newton(read, name, r), u: Math.hypot(own, r * read) };
        };
        const found = compared(of(trueLeft, first, calibrations[0]), of(trueRight, second, calibrations[1]));
        if (found.ratio.low <= trueLeft / trueRight && found.ratio.high >= trueLeft / trueRight) held.ratio++;
        const apart = trueLeft - trueRight;
        if (found.difference.low <= apart && found.difference.high >= apart) held.difference++;
      }
      // four standard errors of a share of 95 % from so many draws
      expect(Math.abs(held.ratio / draws - 0.95), calibrations.join()).toBeLessThan(0.02);
      expect(Math.abs(held.difference / draws - 0.95), calibrations.join()).toBeLessThan(0.02);
    }
  });
});
