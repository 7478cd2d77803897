import { expect, test } from 'vitest';
import {
  deviationOfLegs,
  type MeanDesign,
  powerOfGroups,
  powerOfPairs,
} from '../../../packages/analysis/src/design/mean-power.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';

type Case = MeanDesign & { readonly people: number };

test.each([
  ['design.groups', powerOfGroups],
  ['design.pairs', powerOfPairs],
] as const)('%s: the power is that of the noncentral t of SciPy', (name, powerOf) => {
  const { input, expected, rtol, atol } = readReference<Case[], number[]>(name);
  expect(input.length).toBeGreaterThan(20);
  expect(input.map((one) => powerOf(one, one.people))).toBeCloseToEach(expected, { rtol, atol });
});

test('half a standard deviation with 64 in each group has a power of 80 %', () => {
  // Cohen (1988), Statistical power analysis, table 2.4.1 (from memory): n = 64 at d = 0.5, alpha 0.05 on both sides, power 0.80
  const half: MeanDesign = { aim: 'differs', difference: 0.5, sd: 1, level: 0.95 };
  expect(powerOfGroups(half, 64)).toBeGreaterThan(0.8);
  expect(powerOfGroups(half, 63)).toBeLessThan(0.8);
});

test('no difference is found as often as the level allows, and a difference to the other side as often as to this one', () => {
  const none: MeanDesign = { aim: 'differs', difference: 0, sd: 3, level: 0.95 };
  expect([powerOfGroups(none, 9), powerOfPairs({ ...none, aim: 'not-worse' }, 9)]).toBeCloseToEach([0.05, 0.025], {
    rtol: 1e-9,
    atol: 0,
  });
  const one = { ...none, difference: 2 };
  expect([powerOfPairs({ ...one, difference: -2 }, 12)]).toBeCloseToEach([powerOfPairs(one, 12)], {
    rtol: 1e-12,
    atol: 0,
  });
});

test('two legs that are alike tell as much as one, two that are not as much as two people', () => {
  expect(deviationOfLegs(4, 2, 1)).toBe(4);
  expect(deviationOfLegs(4, 1, 0.5)).toBe(4);
  expect([deviationOfLegs(4, 2, 0), deviationOfLegs(4, 2, 0.5)]).toBeCloseToEach(
    [4 / Math.SQRT2, 4 * Math.sqrt(0.75)],
    {
      rtol: 1e-12,
      atol: 0,
    },
  );
});

test('refuses a spread of nothing, one person and a third leg', () => {
  const one: MeanDesign = { aim: 'differs', difference: 1, sd: 1, level: 0.95 };
  expect(() => powerOfGroups({ ...one, sd: 0 }, 5)).toThrow('sd');
  expect(() => powerOfGroups({ ...one, level: 1 }, 5)).toThrow('level');
  expect(() => powerOfPairs(one, 1)).toThrow('people');
  expect(() => powerOfPairs({ ...one, difference: Number.NaN }, 5)).toThrow('difference');
  expect(() => deviationOfLegs(1, 3, 0.5)).toThrow('legs');
  expect(() => deviationOfLegs(1, 2, 1.1)).toThrow('alike');
});
