import { expect, test } from 'vitest';
import { variation } from '../../../packages/analysis/src/agreement/typical-error.ts';
import '../../support/close.ts';
import { ratingRows } from '../../support/rating-fixture.ts';

test('Hopkins (2000): 4.19 % of the mean, 4.08 % by logarithms', () => {
  const { rawPercent, logPercent } = variation(ratingRows('hopkins-2000'), 0.95);
  expect(rawPercent!.value).toBeCloseTo(4.188, 3);
  expect(logPercent!.value).toBeCloseTo(4.079, 3);
});

test('an error that is a share of the value is found by logarithms, in any unit', () => {
  const up = [10, 100, 1000, 10_000].map((value, i) => (i % 2 === 0 ? [value, value * 1.1] : [value * 1.1, value]));
  for (const unit of [1, 0.001]) {
    const { logPercent } = variation(
      up.map((row) => row.map((value) => unit * value)),
      0.95,
    );
    // log differences are +-ln 1.1, mean 0, over root 2: sd = ln 1.1 sqrt(4/3) / sqrt 2
    const expected = 100 * Math.expm1(Math.log(1.1) * Math.sqrt(4 / 3 / 2));
    expect([logPercent!.value]).toBeCloseToEach([expected], { rtol: 1e-9, atol: 0 });
    expect(logPercent!.low).toBeLessThan(expected);
    expect(logPercent!.high).toBeGreaterThan(expected);
  }
});

test('no share of a mean that is not above 0, no logarithm of 0, no variation where nothing varied', () => {
  const around = variation(
    [
      [-3, -1],
      [2, 2],
      [1, -2],
    ],
    0.95,
  );
  expect(around).toEqual({ rawPercent: undefined, logPercent: undefined });
  const zero = variation(
    [
      [0, 1],
      [2, 2],
      [4, 3],
    ],
    0.95,
  );
  expect(zero.rawPercent).toBeDefined();
  expect(zero.logPercent).toBeUndefined();
  expect(
    variation(
      [
        [1, 1],
        [2, 2],
      ],
      0.95,
    ),
  ).toEqual({ rawPercent: undefined, logPercent: undefined });
  expect(() =>
    variation(
      [
        [1, 1],
        [2, 2],
      ],
      2,
    ),
  ).toThrow('level');
});
