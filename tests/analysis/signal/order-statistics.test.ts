import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  median,
  medianAbsoluteDeviation,
  quantile,
  quantileInPlace,
} from '../../../packages/analysis/src/signal/order-statistics.ts';
import { createRandom } from '../../../packages/analysis/src/signal/random.ts';
import { arbitrarySignal } from '../../support/arbitraries.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';
import { leavesInputUnchanged } from '../../support/laws.ts';
import { runs } from '../../support/runs.ts';

describe('order statistics', () => {
  test('medians of odd, even and single lists', () => {
    expect([median([3, 1, 2]), median([4, 1, 3, 2]), median([7]), median([2, 2, 2, 2])]).toEqual([2, 2.5, 7, 2]);
  });

  test('quantiles of 10, 20, 30, 40, 50 by definition 7', () => {
    expect([0, 0.25, 0.4, 0.5, 1].map((p) => quantile([50, 20, 40, 10, 30], p))).toEqual([10, 20, 26, 30, 50]);
  });

  test('the median absolute deviation of 1, 1, 2, 2, 4, 6, 9 is 1, times the scale', () => {
    expect(medianAbsoluteDeviation([1, 1, 2, 2, 4, 6, 9])).toBe(1.482602218505602);
    expect(medianAbsoluteDeviation([5, 5, 5])).toBe(0);
  });

  test('agrees with sorting on any list, sorted and reversed ones and ones with ties included', () => {
    const ties = fc
      .array(fc.integer({ min: 0, max: 4 }), { minLength: 1, maxLength: 60 })
      .map((x) => Float64Array.from(x));
    const sorted = arbitrarySignal(1, 60).map((x) => x.sort());
    const lists = fc.oneof(
      arbitrarySignal(1, 80),
      ties,
      sorted,
      sorted.map((x) => x.reverse()),
    );
    fc.assert(
      fc.property(lists, fc.integer({ min: 0, max: 100 }), (samples, percent) => {
        const order = Float64Array.from(samples).sort();
        const rank = (order.length - 1) * (percent / 100);
        const below = Math.floor(rank);
        const above = Math.min(below + 1, order.length - 1);
        const slow = order[below] + (rank - below) * (order[above] - order[below]);
        expect(quantile(samples, percent / 100)).toBe(slow);
      }),
      runs(300, 5000),
    );
  });

  test('agrees with numpy.quantile and scipy.stats.median_abs_deviation', () => {
    const { input, expected, ...tolerance } = readReference<
      { samples: number[]; probability: number[] },
      { quantiles: number[]; medianAbsoluteDeviation: number }
    >('order-statistics.quantiles');
    expect(input.probability.map((p) => quantile(input.samples, p))).toBeCloseToEach(expected.quantiles, tolerance);
    expect([medianAbsoluteDeviation(input.samples)]).toBeCloseToEach([expected.medianAbsoluteDeviation], tolerance);
  });

  test('law: leaves its input alone', () => {
    leavesInputUnchanged((x) => quantile(x, 0.3), arbitrarySignal(1, 30));
  });

  test('nothing, NaN and a share beyond 1 are refused', () => {
    expect(() => median([])).toThrow(expect.objectContaining({ code: 'too-short' }));
    expect(() => median([1, Number.NaN])).toThrow(expect.objectContaining({ code: 'not-finite' }));
    expect(() => quantile([1], 1.01)).toThrow(expect.objectContaining({ code: 'out-of-range' }));
  });
});

test('values that may be reordered give the same quantile and stay the same values', () => {
  const values = Float64Array.of(50, 20, 40, 10, 30);
  expect(quantileInPlace(values, 0.4)).toBe(26);
  expect(Array.from(values).sort((a, b) => a - b)).toEqual([10, 20, 30, 40, 50]);
});

test('long lists agree with sorting, few values and nearly equal ones included', () => {
  const random = createRandom(3);
  const lists = [
    Float64Array.from({ length: 5000 }, () => random()),
    Float64Array.from({ length: 5001 }, () => Math.floor(3 * random())),
    Float64Array.from({ length: 4000 }, (_, i) => i),
    Float64Array.from({ length: 4000 }, (_, i) => 4000 - i),
    // intervals of sample times: equal but for rounding, with one gap
    Float64Array.from({ length: 6000 }, (_, i) => (i === 3000 ? 0.7 : (i + 1) / 1000 - i / 1000)),
  ];
  for (const list of lists) {
    const sorted = Float64Array.from(list).sort();
    for (const rank of [0, 1, 17, Math.floor(list.length / 2), list.length - 2, list.length - 1]) {
      // the rank comes back from its share with a rounding error
      expect([quantile(list, rank / (list.length - 1))]).toBeCloseToEach([sorted[rank]], { rtol: 1e-9, atol: 1e-9 });
    }
    expect(median(list)).toBe((sorted[(list.length - 1) >> 1] + sorted[list.length >> 1]) / 2);
  }
});
