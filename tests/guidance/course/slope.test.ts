import { leastSlope, theilSenSlope } from '@surae/guidance';
import { describe, expect, test } from 'vitest';

test('the slope of a published example: Hollander, Wolfe & Chicken, example 9.1', () => {
  // pair slopes -.15 -.13 -.08 -.07 -.0575 -.055 -.045 -.0333 .01 .04: the middle value is -0.05625
  const values = [1.26, 1.27, 1.12, 1.16, 1.03];
  expect(Math.abs(theilSenSlope(values.map((y, i) => [i + 1, y]))! + 0.05625)).toBeLessThan(1e-12);
});

test('one value far out does not bend it: Anscombe III, 0.34556 (from memory)', () => {
  const x = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];
  const y = [7.46, 6.77, 12.74, 7.11, 7.81, 8.84, 6.08, 5.39, 8.15, 6.42, 5.73];
  expect(Math.abs(theilSenSlope(x.map((one, i) => [one, y[i]]))! - 0.34556)).toBeLessThan(1e-4);
});

test('of fewer than two places there is none', () => {
  expect([
    theilSenSlope([]),
    theilSenSlope([[1, 2]]),
    theilSenSlope([
      [1, 2],
      [1, 3],
    ]),
  ]).toEqual([null, null, null]);
});

describe('the least that a slope may be', () => {
  // pair slopes are the numbers of their rank: the bound tells which one it is
  const slopes = (values: readonly number[]) =>
    values
      .flatMap((y, i) => values.slice(i + 1).map((other, j) => (other - y) / (j + 1)))
      .toSorted((one, other) => one - other);

  // Kendall's table: n = 4, 5, 6, 7, 8 and one in twenty, P(S >= 6, 8, 11, 13, 16) = .042 .042 .028 .035 .031 (from memory)
  test.each([
    [4, 1],
    [5, 2],
    [6, 3],
    [7, 5],
    [8, 7],
  ])('of %d points is pair %d from below, by the published table', (count, place) => {
    const values = [0.3, 1.9, 1.1, 4.6, 3.2, 7.7, 6.1, 9.4].slice(0, count);
    const points = values.map((y, x) => [x, y] as const);
    expect(leastSlope(points, 0.95)).toBe(slopes(values)[place - 1]);
  });

  test('is below the true slope in so many of all orders of the noise, and hardly more', () => {
    const orders = (left: readonly number[]): readonly (readonly number[])[] =>
      left.length === 0 ? [[]] : left.flatMap((one, i) => orders(left.toSpliced(i, 1)).map((rest) => [one, ...rest]));
    const all = orders([0, 0.1, 0.23, 0.37, 0.55, 0.8]);
    const below = all.filter(
      (noise) =>
        leastSlope(
          noise.map((y, x) => [x, 2 * x + y]),
          0.95,
        )! < 2,
    ).length;
    expect(below / all.length).toBeGreaterThanOrEqual(0.95);
    expect(below / all.length).toBeLessThan(0.98);
  });

  test('of three points it cannot be told at one in twenty, and can at one in six', () => {
    const points = [
      [0, 1],
      [1, 2],
      [2, 4],
    ] as const;
    expect([leastSlope(points, 0.95), leastSlope(points, 0.8)]).toEqual([null, 1]);
  });
});
