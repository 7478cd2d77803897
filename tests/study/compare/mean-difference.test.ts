import { expect, test } from 'vitest';
import {
  type MeanDifference,
  momentsOf,
  pairedDifference,
  welchDifference,
} from '../../../packages/study/src/compare/mean-difference.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';

interface Case {
  readonly first: readonly number[];
  readonly second: readonly number[];
  readonly level: number;
}

type Told = Record<'value' | 'low' | 'high' | 't' | 'p' | 'df', number>;

const numbers = (one: Told | MeanDifference | undefined): number[] =>
  one === undefined ? [] : [one.value, one.low, one.high, one.t, one.p, one.df];

test.each([
  ['study.independent', welchDifference],
  ['study.paired', pairedDifference],
] as const)('%s: estimate, interval, t, p and degrees of freedom are those of SciPy', (name, differenceOf) => {
  const { input, expected, rtol, atol } = readReference<Case[], Told[]>(name);
  expect(input.length).toBeGreaterThan(2);
  for (const [at, { first, second, level }] of input.entries()) {
    expect(numbers(differenceOf(first, second, level))).toBeCloseToEach(numbers(expected[at]), { rtol, atol });
  }
});

test('by hand: 1, 2, 3 against 4, 5, 6', () => {
  // means 2 and 5, variance 1 each: standard error root of 2/3, 4 degrees of freedom, t at 97.5 % of 4 is 2.776445
  const found = welchDifference([1, 2, 3], [4, 5, 6], 0.95)!;
  expect([found.value, found.df]).toBeCloseToEach([-3, 4], { rtol: 1e-12, atol: 0 });
  expect([found.high]).toBeCloseToEach([-3 + 2.776445 * Math.sqrt(2 / 3)], { rtol: 1e-6, atol: 0 });
});

test('by hand: differences 1, 2, 3', () => {
  // mean 2, deviation 1: standard error 1 / root 3, t at 97.5 % of 2 is 4.302653
  const found = pairedDifference([5, 7, 9], [4, 5, 6], 0.95)!;
  expect([found.value, found.df, found.low]).toBeCloseToEach([2, 2, 2 - 4.302653 / Math.sqrt(3)], {
    rtol: 1e-6,
    atol: 0,
  });
});

test('where nothing spreads there is no width, and so no interval', () => {
  expect(welchDifference([3, 3, 3], [4, 4], 0.95)).toBeUndefined();
  expect(pairedDifference([3, 4, 5], [2, 3, 4], 0.95)).toBeUndefined();
});

test('changing the two over changes the sign and nothing else', () => {
  const [a, b] = [
    [3, 5, 9, 4],
    [6, 1, 7],
  ];
  const one = welchDifference(a, b, 0.9)!;
  const other = welchDifference(b, a, 0.9)!;
  expect(numbers(other)).toBeCloseToEach([-one.value, -one.high, -one.low, -one.t, one.p, one.df], {
    rtol: 1e-12,
    atol: 0,
  });
});

test('moments in two passes hold where values are large and close', () => {
  expect(momentsOf([1e9 + 1, 1e9 + 2, 1e9 + 3]).sd).toBeCloseTo(1, 9);
});
