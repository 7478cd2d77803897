import { readFileSync } from 'node:fs';
import { ratingGroups, readRatingTable } from '@surae/records';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cohenKappa, type Kappa } from '../../../packages/analysis/src/agreement/kappa.ts';
import '../../support/close.ts';
import { fixturePath, readReference } from '../../support/fixture.ts';
import { runs } from '../../support/runs.ts';

function kappaOf(counts: readonly (readonly number[])[]): Kappa {
  const pairs = counts.flatMap((row, i) => row.flatMap((count, j) => Array.from({ length: count }, () => [i, j])));
  return cohenKappa(
    pairs.map(([i]) => `w${i}`),
    pairs.map(([, j]) => `w${j}`),
    0.95,
  );
}

function kappaOfFile(name: string): Kappa {
  const [group] = ratingGroups(readRatingTable(readFileSync(fixturePath(`agreement/${name}.csv`))), 'rater');
  const column = (at: number): string[] => group.values.map((row) => String(row[at]));
  return cohenKappa(column(0), column(1), 0.95);
}

test('Cohen (1960), three words: 0.49, from agreement of 0.70 where 0.41 is chance', () => {
  const { kappa, observedAgreement, chanceAgreement } = kappaOfFile('cohen-three-words');
  expect([kappa!, observedAgreement, chanceAgreement]).toBeCloseToEach([0.29 / 0.59, 0.7, 0.41], {
    rtol: 1e-12,
    atol: 0,
  });
});

test('Altman (1991), mammograms: 0.47, from 54 of 85', () => {
  const { kappa, observedAgreement, itemCount } = kappaOfFile('altman-1991-mammograms');
  expect(kappa!.toFixed(2)).toBe('0.47');
  expect([observedAgreement, itemCount]).toEqual([54 / 85, 85]);
});

test('agrees with cohen.kappa of psych, variance included', () => {
  const { input, expected, ...tolerance } = readReference<
    { counts: number[][][] },
    { kappa: number; variance: number }[]
  >('agreement.kappa');
  expect(input.counts).toHaveLength(4);
  input.counts.forEach((counts, i) => {
    const { kappa, interval } = kappaOf(counts);
    const half = 1.959963984540054 * Math.sqrt(expected[i].variance);
    expect([kappa!, interval!.low, interval!.high]).toBeCloseToEach(
      [expected[i].kappa, Math.max(-1, expected[i].kappa - half), Math.min(1, expected[i].kappa + half)],
      tolerance,
    );
  });
});

test('by hand: half of four agree where half is chance', () => {
  const { kappa, agreementOn, counts, categories } = cohenKappa(
    ['no', 'no', 'yes', 'yes'],
    ['no', 'yes', 'no', 'yes'],
    0.95,
  );
  expect([kappa, ...agreementOn]).toEqual([0, 0.5, 0.5]);
  expect([categories, counts]).toEqual([
    ['no', 'yes'],
    [
      [1, 1],
      [1, 1],
    ],
  ]);
});

test('law: neither the order of items, nor the words, nor who comes first matters', () => {
  const word = fc.constantFrom('yes', 'no', 'cannot_tell');
  fc.assert(
    fc.property(fc.array(fc.tuple(word, word), { minLength: 4, maxLength: 60 }), (items) => {
      const first = items.map(([a]) => a);
      const second = items.map(([, b]) => b);
      const numbers = ({ kappa, interval }: Kappa): number[] => [
        kappa ?? Number.NaN,
        interval?.low ?? Number.NaN,
        interval?.high ?? Number.NaN,
      ];
      const tolerance = { rtol: 1e-9, atol: 1e-9 };
      const usual = numbers(cohenKappa(first, second, 0.95));
      expect(numbers(cohenKappa(second, first, 0.95))).toBeCloseToEach(usual, tolerance);
      expect(numbers(cohenKappa(first.toReversed(), second.toReversed(), 0.95))).toBeCloseToEach(usual, tolerance);
      const renamed = (list: string[]): string[] => list.map((one) => `${one.length}`);
      expect(numbers(cohenKappa(renamed(first), renamed(second), 0.95))).toBeCloseToEach(usual, tolerance);
    }),
    runs(100, 1000),
  );
});

test('one word only says nothing; full agreement is 1 without a width that it has not earned', () => {
  expect(cohenKappa(['yes', 'yes'], ['yes', 'yes'], 0.95)).toMatchObject({ kappa: undefined, interval: undefined });
  expect(cohenKappa(['yes', 'no'], ['yes', 'no'], 0.95)).toMatchObject({ kappa: 1, interval: undefined });
  // a rater who says yes to everything tells nothing apart: 0, and not a certain 0
  expect(cohenKappa(['yes', 'no', 'no'], ['yes', 'yes', 'yes'], 0.95)).toMatchObject({ interval: undefined });
  expect(cohenKappa(['yes', 'no', 'no'], ['yes', 'yes', 'yes'], 0.95).kappa).toBeCloseTo(0, 12);
  expect(() => cohenKappa(['yes'], ['yes'], 0.95)).toThrow('first');
  expect(() => cohenKappa(['yes', 'no'], ['yes'], 0.95)).toThrow('second');
  expect(() => cohenKappa(['yes', 'no'], ['yes', 'no'], 1)).toThrow('level');
});
