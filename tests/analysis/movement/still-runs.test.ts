import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findStillRuns, slidingRange } from '../../../packages/analysis/src/movement/still-runs.ts';

describe('sliding range', () => {
  test('is greatest minus least of the window', () => {
    expect([...slidingRange(Float64Array.of(1, 5, 2, 2, 9), 1)]).toEqual([4, 4, 3, 7, 7]);
  });

  test('agrees with the definition as a double loop', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 1, maxLength: 40 }),
        fc.integer({ min: 0, max: 6 }),
        (values, half) => {
          const slow = values.map((_, i) => {
            const window = values.slice(Math.max(0, i - half), i + half + 1);
            return Math.max(...window) - Math.min(...window);
          });
          expect([...slidingRange(Float64Array.from(values), half)]).toEqual(slow);
        },
      ),
      { seed: 21 },
    );
  });
});

describe('still runs', () => {
  test('are the stretches that stay within the tolerance, with their level', () => {
    const signal = Float64Array.from({ length: 60 }, (_, i) => (i < 20 ? 1 : i < 40 ? i : 7));
    const runs = findStillRuns(signal, 2, 0.5);
    expect(runs.map((run) => run.level)).toEqual([1, 7]);
    expect(runs[0]).toMatchObject({ from: 0, to: 20 });
    expect(runs[1]).toMatchObject({ from: 40, to: 60 });
  });

  test('are none where the signal never rests', () => {
    expect(
      findStillRuns(
        Float64Array.from({ length: 30 }, (_, i) => i),
        2,
        1,
      ),
    ).toEqual([]);
  });
});
