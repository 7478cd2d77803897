import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { despike } from '../../../packages/analysis/src/signal/despike.ts';
import { arbitrarySignal } from '../../support/arbitraries.ts';
import '../../support/close.ts';
import { leavesInputUnchanged } from '../../support/laws.ts';
import { runs } from '../../support/runs.ts';

/** The definition, with sorting for every median. */
function slowly(samples: Float64Array, halfWindow: number, threshold: number): { samples: number[]; spikes: number[] } {
  const middle = (values: number[]): number => {
    const sorted = values.slice().sort((a, b) => a - b);
    const half = Math.floor(sorted.length / 2);
    return sorted.length % 2 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  };
  const spikes: number[] = [];
  const repaired = Array.from(samples, (value, i) => {
    const window = Array.from(samples.slice(Math.max(0, i - halfWindow), i + halfWindow + 1));
    const centre = middle(window);
    const spread = 1.482602218505602 * middle(window.map((x) => Math.abs(x - centre)));
    if (Math.abs(value - centre) <= threshold * spread) return value;
    spikes.push(i);
    return centre;
  });
  return { samples: repaired, spikes };
}

describe('despiking', () => {
  test('a lone spike is replaced by the median of its window, its neighbours stay', () => {
    const { samples, spikes } = despike(Float64Array.of(1, 2, 3, 400, 5, 6, 7), { halfWindow: 2, threshold: 4 });
    expect(Array.from(samples)).toEqual([1, 2, 3, 5, 5, 6, 7]);
    expect(spikes).toEqual([3]);
  });

  test('a spike of two samples goes too, in a window that reaches further than that', () => {
    const { spikes } = despike(Float64Array.of(1, 2, 3, 90, 91, 6, 7, 8, 9), { halfWindow: 3, threshold: 4 });
    expect(spikes).toEqual([3, 4]);
  });

  test('spikes at the two ends are found', () => {
    const { samples, spikes } = despike(Float64Array.of(50, 1, 2, 3, 4, 5, -60), { halfWindow: 3, threshold: 4 });
    expect(spikes).toEqual([0, 6]);
    expect(Array.from(samples)).toEqual([2.5, 1, 2, 3, 4, 5, 3.5]);
  });

  test('a step is no spike', () => {
    const step = Float64Array.from({ length: 30 }, (_, i) => (i < 15 ? 0 : 10));
    expect(despike(step, { halfWindow: 3, threshold: 3 }).spikes).toEqual([]);
  });

  test('one count of a coarse sensor on a flat stretch is a spike only without its least deviation', () => {
    const coarse = Float64Array.of(5, 5, 5, 6, 5, 5, 5);
    expect(despike(coarse, { halfWindow: 3, threshold: 3 }).spikes).toEqual([3]);
    expect(despike(coarse, { halfWindow: 3, threshold: 3, leastDeviation: 1 }).spikes).toEqual([]);
  });

  test('agrees with the definition on any signal', () => {
    fc.assert(
      fc.property(
        // whole numbers of ordinary size: deviations on either side of the threshold, ties included
        fc.array(fc.integer({ min: -30, max: 30 }), { minLength: 1, maxLength: 40 }).map((x) => Float64Array.from(x)),
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 1, max: 6 }),
        (x, halfWindow, threshold) => {
          const quick = despike(x, { halfWindow, threshold });
          const slow = slowly(x, halfWindow, threshold);
          expect({ samples: Array.from(quick.samples), spikes: quick.spikes }).toEqual(slow);
        },
      ),
      runs(100, 2000),
    );
  });

  test('law: leaves its input alone', () => {
    leavesInputUnchanged((x) => despike(x, { halfWindow: 2, threshold: 2 }), arbitrarySignal(1, 40));
  });

  test.each([
    { halfWindow: 0, threshold: 3 },
    { halfWindow: 1.5, threshold: 3 },
    { halfWindow: 2, threshold: 0 },
    { halfWindow: 2, threshold: 3, leastDeviation: -1 },
  ])('options %o are refused', (options) => {
    expect(() => despike(Float64Array.of(1, 2, 3), options)).toThrow(expect.objectContaining({ code: 'out-of-range' }));
  });

  test('an empty signal and a NaN are refused', () => {
    const options = { halfWindow: 2, threshold: 3 };
    expect(() => despike(new Float64Array(0), options)).toThrow(expect.objectContaining({ code: 'too-short' }));
    expect(() => despike(Float64Array.of(1, Number.NaN), options)).toThrow(
      expect.objectContaining({ code: 'not-finite' }),
    );
  });
});
