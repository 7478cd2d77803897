import { theilSenSlope } from '@surae/guidance';
import { expect, test } from 'vitest';

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
