import fc from 'fast-check';
import { expect, test } from 'vitest';
import { detectableChange } from '../../../packages/analysis/src/agreement/detectable-change.ts';
import { intraclassForms } from '../../../packages/analysis/src/agreement/intraclass.ts';
import { meanSquares } from '../../../packages/analysis/src/agreement/mean-squares.ts';
import { boundedDeviation, measurementError } from '../../../packages/analysis/src/agreement/measurement-error.ts';
import { mean, standardDeviation } from '../../../packages/analysis/src/signal/moments.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';
import { arbitraryRatings, ratingRows } from '../../support/rating-fixture.ts';
import { runs } from '../../support/runs.ts';

const errorOf = (table: number[][]) => measurementError(meanSquares(table), 0.95);

test('Weir (2005), p. 236: the same error of 7.6 in two data sets of different spread', () => {
  for (const name of ['weir-2005-a', 'weir-2005-b']) {
    const { sem, df } = errorOf(ratingRows(name))!;
    expect(sem.value).toBeCloseTo(7.5569, 4);
    expect(df).toBe(7);
  }
});

test('Weir (2005), data set A: spread times root of 1 - ICC is another, smaller figure, and is not what is given', () => {
  const table = ratingRows('weir-2005-a');
  const column = (at: number): number[] => table.map((row) => row[at]);
  const spread = standardDeviation(table.flat());
  expect([mean(column(0)), mean(column(1))]).toEqual([156, 153.25]);
  expect([standardDeviation(column(0)), standardDeviation(column(1)), spread]).toBeCloseToEach(
    [32.77, 32.89, 31.7488],
    {
      rtol: 0,
      atol: 0.005,
    },
  );
  const [, absolute, consistency] = intraclassForms(meanSquares(table), 0.95).map(({ estimate }) => estimate!.value);
  const byIcc = (icc: number): number => spread * Math.sqrt(1 - icc);
  expect([byIcc(consistency), byIcc(absolute)]).toBeCloseToEach([7.308, 7.101], { rtol: 0, atol: 0.0005 });
  expect(errorOf(table)!.sem.value).toBeGreaterThan(byIcc(consistency) + 0.2);
  // errors of estimation and of prediction, p. 236: 7.1 and 10.2
  const others = [spread * Math.sqrt(consistency * (1 - consistency)), spread * Math.sqrt(1 - consistency ** 2)];
  expect(others).toBeCloseToEach([7.1118, 10.1973], { rtol: 0, atol: 0.0006 });
});

test('Hopkins (2000): typical error 2.9', () => {
  expect(errorOf(ratingRows('hopkins-2000'))!.sem.value).toBeCloseTo(2.8896, 4);
});

test('the interval of the error by number of pairs, SciPy chi2.ppf: 5, 10, 15, 20, 30 and 50', () => {
  const factors = [5, 10, 15, 20, 30, 50].map((pairs) => boundedDeviation(1, pairs - 1, 0.95));
  expect(factors.flatMap(({ low, high }) => [low.toFixed(2), high.toFixed(2)])).toEqual([
    '0.60',
    '2.87',
    '0.69',
    '1.83',
    '0.73',
    '1.58',
    '0.76',
    '1.46',
    '0.80',
    '1.34',
    '0.84',
    '1.25',
  ]);
});

test('agrees with the residual of lm and of a mixed model of R, with qchisq and qnorm', () => {
  interface Expected {
    readonly sem: number;
    readonly mixed: number;
    readonly low: number;
    readonly high: number;
    readonly change: Readonly<Record<'at95' | 'at90' | 'at80', number[]>>;
  }
  const { input, expected, ...tolerance } = readReference<{ tables: number[][][] }, Expected[]>('agreement.error');
  expect(input.tables).toHaveLength(11);
  input.tables.forEach((table, i) => {
    const { sem } = errorOf(table)!;
    const want = expected[i];
    expect([sem.value, sem.low, sem.high]).toBeCloseToEach([want.sem, want.low, want.high], tolerance);
    const changes = [0.95, 0.9, 0.8].flatMap((level) => {
      const { value, low, high } = detectableChange(sem, level);
      return [value, low, high];
    });
    expect(changes).toBeCloseToEach([...want.change.at95, ...want.change.at90, ...want.change.at80], tolerance);
    // restricted likelihood holds a variance of subjects at zero that comes out below it: there, and only there, they differ
    const squares = meanSquares(table).means;
    const isBelowZero = squares.subjects < squares.residual;
    expect(Math.abs(want.mixed / sem.value - 1) > 1e-5).toBe(isBelowZero);
  });
});

test('for two tests it is the standard deviation of the differences over root 2, and a unit only scales it', () => {
  fc.assert(
    fc.property(arbitraryRatings, fc.constantFrom(0.001, 4.4482216, 1000), (table, unit) => {
      const pairs = table.map((row) => row.slice(0, 2));
      const differences = pairs.map(([a, b]) => a - b);
      const average = differences.reduce((sum, d) => sum + d, 0) / differences.length;
      const variance = differences.reduce((sum, d) => sum + (d - average) ** 2, 0) / (differences.length - 1);
      fc.pre(variance > 1e-6);
      const { sem } = errorOf(pairs)!;
      expect([sem.value]).toBeCloseToEach([Math.sqrt(variance / 2)], { rtol: 1e-9, atol: 0 });
      const scaled = errorOf(pairs.map((row) => row.map((value) => unit * value)))!.sem;
      expect(Object.values(scaled)).toBeCloseToEach(
        Object.values(sem).map((value) => unit * value),
        { rtol: 1e-9, atol: 0 },
      );
      // a shift between days that all people share is no error
      const shifted = errorOf(pairs.map(([a, b]) => [a, b + 5]))!.sem;
      expect([shifted.value]).toBeCloseToEach([sem.value], { rtol: 1e-9, atol: 0 });
    }),
    runs(100, 1000),
  );
});

test('no residual is no proof of no error, and impossible arguments are refused', () => {
  expect(
    errorOf([
      [1, 2],
      [3, 4],
      [7, 8],
    ]),
  ).toBeUndefined();
  expect(() => boundedDeviation(0, 5, 0.95)).toThrow('sd');
  expect(() => boundedDeviation(1, 5, 1)).toThrow('level');
  expect(() => boundedDeviation(1, 0, 0.9)).toThrow('df');
});
