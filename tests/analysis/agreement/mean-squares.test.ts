import fc from 'fast-check';
import { expect, test } from 'vitest';
import { meanSquares } from '../../../packages/analysis/src/agreement/mean-squares.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';
import { arbitraryRatings, ratingRows } from '../../support/rating-fixture.ts';
import { runs } from '../../support/runs.ts';

test('Shrout & Fleiss (1979), Table 3: the mean squares of six targets and four judges', () => {
  const { sums, means, df, grandMean } = meanSquares(ratingRows('shrout-fleiss-1979'));
  expect(Object.values(means)).toBeCloseToEach([11.24167, 32.48611, 1.01944, 6.26389], { rtol: 0, atol: 5e-6 });
  expect(Object.values(sums)).toBeCloseToEach([56.2083, 97.4583, 15.2917, 112.75], { rtol: 0, atol: 5e-5 });
  expect(df).toEqual({ subjects: 5, raters: 3, residual: 15, within: 18 });
  expect(grandMean).toBeCloseTo(127 / 24, 12);
});

test('Weir (2005): two data sets of very different spread with one and the same error', () => {
  const [a, b] = ['weir-2005-a', 'weir-2005-b'].map((name) => meanSquares(ratingRows(name)));
  expect([a.means.subjects, a.means.raters, a.means.residual]).toBeCloseToEach([2098.5357, 30.25, 57.1071], {
    rtol: 0,
    atol: 5e-5,
  });
  expect([b.means.residual, b.means.raters]).toBeCloseToEach([a.means.residual, a.means.raters], {
    rtol: 1e-12,
    atol: 0,
  });
  expect(b.means.subjects).toBeLessThan(a.means.subjects / 5);
});

test('agrees with aov of R', () => {
  const { input, expected, ...tolerance } = readReference<
    { tables: number[][][] },
    { sums: number[]; means: number[] }[]
  >('agreement.mean-squares');
  expect(input.tables.length).toBeGreaterThan(10);
  input.tables.forEach((table, i) => {
    const { sums, means } = meanSquares(table);
    expect([sums.subjects, sums.raters, sums.residual]).toBeCloseToEach(expected[i].sums, tolerance);
    expect([means.subjects, means.raters, means.residual]).toBeCloseToEach(expected[i].means, tolerance);
  });
});

/** Analysis of variance by explicit sums of squares, the way of a desk calculator. */
function byExplicitSums(table: number[][]) {
  const n = table.length;
  const k = table[0].length;
  let all = 0;
  let squares = 0;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < k; j++) [all, squares] = [all + table[i][j], squares + table[i][j] ** 2];
  const correction = all ** 2 / (n * k);
  let subjects = -correction;
  for (let i = 0; i < n; i++) subjects += table[i].reduce((sum, value) => sum + value, 0) ** 2 / k;
  let raters = -correction;
  for (let j = 0; j < k; j++) raters += table.reduce((sum, row) => sum + row[j], 0) ** 2 / n;
  const residual = squares - correction - subjects - raters;
  return { subjects, raters, residual, within: raters + residual };
}

test('laws: the explicit sums agree, and no order of subjects or raters changes anything', () => {
  fc.assert(
    fc.property(arbitraryRatings, (table) => {
      const { sums } = meanSquares(table);
      const tolerance = { rtol: 1e-9, atol: 1e-7 };
      const slow = byExplicitSums(table);
      expect([sums.subjects, sums.raters, sums.residual, sums.within]).toBeCloseToEach(
        [slow.subjects, slow.raters, slow.residual, slow.within],
        tolerance,
      );
      const turned = meanSquares(table.toReversed().map((row) => row.toReversed())).sums;
      expect(Object.values(turned)).toBeCloseToEach(Object.values(sums), tolerance);
    }),
    runs(100, 2000),
  );
});

test('what only binary arithmetic leaves over is no spread', () => {
  const { sums } = meanSquares([0.1, 0.7, 1e6 + 0.3].map((value) => [value, value, value]));
  expect([sums.raters, sums.residual, sums.within]).toEqual([0, 0, 0]);
  const shifted = meanSquares([
    [0.1, 0.3],
    [0.7, 0.9],
    [1.1, 1.3],
  ]);
  expect(shifted.sums.residual).toBe(0);
  expect(shifted.sums.raters).toBeCloseTo(0.06, 12);
});

test('too small, ragged or not finite is refused', () => {
  expect(() => meanSquares([[1, 2]])).toThrow('subjects');
  expect(() => meanSquares([[1], [2]])).toThrow('raters');
  expect(() => meanSquares([[1, 2], [3]])).toThrow(expect.objectContaining({ code: 'length-mismatch' }));
  expect(() =>
    meanSquares([
      [1, 2],
      [3, Number.NaN],
    ]),
  ).toThrow(expect.objectContaining({ code: 'not-finite' }));
});
