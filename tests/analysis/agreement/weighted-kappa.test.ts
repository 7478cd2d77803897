import { cohenKappa, type WeightedKappa, type WordWeights, weightedKappa } from '@surae/analysis';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';
import { runs } from '../../support/runs.ts';

const LEVEL = 0.95;
const Z = 1.959963984540054;

/** Items of two raters by the steps of a scale, w0 the lowest. */
function itemsOf(counts: readonly (readonly number[])[]): { first: string[]; second: string[]; words: string[] } {
  const pairs = counts.flatMap((row, i) => row.flatMap((count, j) => Array.from({ length: count }, () => [i, j])));
  return {
    first: pairs.map(([i]) => `w${i}`),
    second: pairs.map(([, j]) => `w${j}`),
    words: counts.map((_, i) => `w${i}`),
  };
}

function kappaOf(counts: readonly (readonly number[])[], weights: WordWeights): WeightedKappa {
  const { first, second, words } = itemsOf(counts);
  return weightedKappa(first, second, words, weights, LEVEL);
}

const mammograms = [
  [21, 12, 0, 0],
  [4, 17, 1, 0],
  [3, 9, 15, 2],
  [0, 0, 0, 1],
];

test('Altman (1991), 85 mammograms: 0.57 by steps (figure from memory)', () => {
  expect(kappaOf(mammograms, 'linear').kappa!.toFixed(2)).toBe('0.57');
});

test('Cohen (1968), three diagnoses with weights of their own: 0.348 (table and figure from memory)', () => {
  const counts = [
    [44, 5, 1],
    [7, 20, 3],
    [9, 5, 6],
  ];
  const differ = [
    [0, 1, 3],
    [1, 0, 6],
    [3, 6, 0],
  ];
  expect(kappaOf(counts, differ).kappa!.toFixed(3)).toBe('0.348');
});

test('agrees with Kappa of vcd, standard error included', () => {
  interface Expected {
    readonly linear: [number, number];
    readonly quadratic: [number, number];
  }
  const { input, expected, ...tolerance } = readReference<{ counts: number[][][] }, Expected[]>(
    'agreement.weighted-kappa',
  );
  expect(input.counts).toHaveLength(4);
  input.counts.forEach((counts, i) => {
    for (const weights of ['linear', 'quadratic'] as const) {
      const [kappa, error] = expected[i][weights];
      const found = kappaOf(counts, weights);
      expect([found.kappa!, found.interval!.low, found.interval!.high]).toBeCloseToEach(
        [kappa, Math.max(-1, kappa - Z * error), Math.min(1, kappa + Z * error)],
        tolerance,
      );
    }
  });
});

test('by hand: of two items one is named a step apart, on a scale of three', () => {
  // steps 0 and 1; by chance, with shares 1/2 1/2 0 and 0 1 0: 1/2 of a step; of two at most: 1 - (1/4) / (1/4) = 0
  expect(weightedKappa(['a', 'b'], ['b', 'b'], ['a', 'b', 'c'], 'linear', LEVEL).kappa).toBe(0);
  // squares 0 and 1 of 4; by chance 1/2 of 4; nothing beyond chance again
  expect(weightedKappa(['a', 'b'], ['b', 'b'], ['a', 'b', 'c'], 'quadratic', LEVEL).kappa).toBe(0);
  // a and c named the other way round: as far apart as can be
  expect(weightedKappa(['a', 'c'], ['c', 'a'], ['a', 'b', 'c'], 'linear', LEVEL).kappa).toBe(-1);
});

const scale = ['none', 'slight', 'clear', 'strong'];
const step = fc.nat(3);
const items = fc.array(fc.tuple(step, step), { minLength: 5, maxLength: 60 });
const wordsOf = (steps: readonly number[]): string[] => steps.map((one) => scale[one]);
const numbers = ({ kappa, interval }: WeightedKappa): number[] => [
  kappa ?? Number.NaN,
  interval?.low ?? Number.NaN,
  interval?.high ?? Number.NaN,
];

describe('laws', () => {
  const tolerance = { rtol: 1e-9, atol: 1e-9 };

  test('squares give the concordance of the steps (Lin 1989, Biometrics 45:255), which is the link to the intraclass correlation', () => {
    fc.assert(
      fc.property(items, (pairs) => {
        const [x, y] = [pairs.map(([a]) => a), pairs.map(([, b]) => b)];
        const mean = (of: number[]): number => of.reduce((sum, one) => sum + one, 0) / of.length;
        const [mx, my] = [mean(x), mean(y)];
        const below = mean(x.map((a) => (a - mx) ** 2)) + mean(y.map((b) => (b - my) ** 2)) + (mx - my) ** 2;
        fc.pre(below > 0);
        const concordance = (2 * mean(x.map((a, i) => (a - mx) * (y[i] - my)))) / below;
        const found = weightedKappa(wordsOf(x), wordsOf(y), scale, 'quadratic', LEVEL);
        expect([found.kappa!]).toBeCloseToEach([concordance], tolerance);
      }),
      runs(200, 3000),
    );
  });

  test('where every difference counts alike it is the kappa without weights, interval included', () => {
    const alike = scale.map((_, i) => scale.map((__, j) => (i === j ? 0 : 1)));
    fc.assert(
      fc.property(items, (pairs) => {
        const [first, second] = [wordsOf(pairs.map(([a]) => a)), wordsOf(pairs.map(([, b]) => b))];
        fc.pre(new Set([...first, ...second]).size > 1);
        const plain = cohenKappa(first, second, LEVEL);
        const found = weightedKappa(first, second, scale, alike, LEVEL);
        expect(numbers(found)).toBeCloseToEach(
          [plain.kappa!, plain.interval?.low ?? Number.NaN, plain.interval?.high ?? Number.NaN],
          tolerance,
        );
      }),
      runs(200, 3000),
    );
  });

  test('the standard error is that of the delta method, by differences of kappa in each share', () => {
    const kappaOfShares = (shares: readonly (readonly number[])[]): number => {
      let [observed, chance] = [0, 0];
      const rows = shares.map((row) => row.reduce((sum, one) => sum + one, 0));
      const columns = shares[0].map((_, j) => shares.reduce((sum, row) => sum + row[j], 0));
      const all = rows.reduce((sum, one) => sum + one, 0);
      shares.forEach((row, i) =>
        row.forEach((one, j) => {
          observed += (Math.abs(i - j) * one) / all;
          chance += (Math.abs(i - j) * rows[i] * columns[j]) / all ** 2;
        }),
      );
      return 1 - observed / chance;
    };
    const n = 85;
    const shares = mammograms.map((row) => row.map((count) => count / n));
    const slope = (i: number, j: number): number => {
      const moved = (by: number) => shares.map((row, a) => row.map((one, b) => (a === i && b === j ? one + by : one)));
      return (kappaOfShares(moved(1e-5)) - kappaOfShares(moved(-1e-5))) / 2e-5;
    };
    let [squares, middle] = [0, 0];
    shares.forEach((row, i) =>
      row.forEach((one, j) => {
        squares += one * slope(i, j) ** 2;
        middle += one * slope(i, j);
      }),
    );
    const error = Math.sqrt((squares - middle ** 2) / n);
    const { kappa, interval } = kappaOf(mammograms, 'linear');
    expect([(interval!.high - kappa!) / Z]).toBeCloseToEach([error], { rtol: 1e-6, atol: 0 });
  });

  test('neither the order of items, nor who comes first, nor the scale read backwards matters; another order of words does', () => {
    fc.assert(
      fc.property(items, fc.constantFrom('linear' as const, 'quadratic' as const), (pairs, weights) => {
        const [first, second] = [wordsOf(pairs.map(([a]) => a)), wordsOf(pairs.map(([, b]) => b))];
        const usual = numbers(weightedKappa(first, second, scale, weights, LEVEL));
        const same = [
          weightedKappa(second, first, scale, weights, LEVEL),
          weightedKappa(first.toReversed(), second.toReversed(), scale, weights, LEVEL),
          weightedKappa(first, second, scale.toReversed(), weights, LEVEL),
        ];
        for (const one of same) expect(numbers(one)).toBeCloseToEach(usual, tolerance);
      }),
      runs(100, 1500),
    );
    const { first, second, words } = itemsOf(mammograms);
    const mixed = [words[2], words[0], words[3], words[1]];
    expect(weightedKappa(first, second, mixed, 'linear', LEVEL).kappa).not.toBeCloseTo(0.5684, 2);
  });
});

test('one word only says nothing; full agreement is 1 without a width that it has not earned', () => {
  const both = (words: string[]) => weightedKappa(words, words, scale, 'linear', LEVEL);
  expect(both(['none', 'none'])).toMatchObject({ kappa: undefined, interval: undefined });
  expect(both(['none', 'clear'])).toMatchObject({ kappa: 1, interval: undefined });
  const constant = weightedKappa(['none', 'clear', 'slight'], ['clear', 'clear', 'clear'], scale, 'linear', LEVEL);
  expect(constant.interval).toBeUndefined();
  expect(constant.kappa).toBeCloseTo(0, 12);
});

test('a word that is not on the scale, a scale that is none and weights that do not fit are refused', () => {
  const of = (words: string[], weights: WordWeights = 'linear', level = LEVEL) =>
    weightedKappa(['a', 'b'], ['b', 'b'], words, weights, level);
  expect(() => of(['a', 'c'])).toThrow('"b" is not among them');
  expect(() => of(['a', 'b', 'b'])).toThrow('"b" twice');
  expect(() => weightedKappa(['a', 'a'], ['a', 'a'], ['a'], 'linear', LEVEL)).toThrow('words');
  expect(() => of(['a', 'b'], 'linear', 1)).toThrow('level');
  expect(() => of(['a', 'b'], [[0, 1]])).toThrow('weights');
  expect(() =>
    of(
      ['a', 'b'],
      [
        [0, 0],
        [0, 0],
      ],
    ),
  ).toThrow('weights');
  expect(() =>
    of(
      ['a', 'b'],
      [
        [0, -1],
        [1, 0],
      ],
    ),
  ).toThrow('weights');
  expect(() =>
    of(
      ['a', 'b'],
      [
        [1, 1],
        [1, 0],
      ],
    ),
  ).toThrow('weights');
});
