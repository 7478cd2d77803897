import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bestRollingMean } from '../../../packages/analysis/src/efforts/rolling-mean.ts';
import { arbitrarySignal } from '../../support/arbitraries.ts';
import { runs } from '../../support/runs.ts';

test('by hand', () => {
  const samples = Float64Array.of(0, 4, 2, 6, 0);
  expect(bestRollingMean(samples, 0, 5, 2)).toEqual({ value: 4, fromIndex: 2 });
  expect(bestRollingMean(samples, 0, 3, 2)).toEqual({ value: 3, fromIndex: 1 });
  expect(bestRollingMean(samples, 0, 3, 4)).toBeNull();
  expect(() => bestRollingMean(samples, 0, 3, 0)).toThrow('window');
});

test('is the greatest of all means', () => {
  fc.assert(
    fc.property(arbitrarySignal(5, 40), fc.integer({ min: 1, max: 5 }), (samples, window) => {
      let best = -Infinity;
      for (let i = 0; i + window <= samples.length; i++) {
        best = Math.max(best, samples.subarray(i, i + window).reduce((sum, value) => sum + value, 0) / window);
      }
      expect(Math.abs(bestRollingMean(samples, 0, samples.length, window)!.value - best)).toBeLessThan(1e-9);
    }),
    runs(50, 500),
  );
});
