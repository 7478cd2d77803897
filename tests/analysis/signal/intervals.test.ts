import fc from 'fast-check';
import { expect, test } from 'vitest';
import { contains, durationS, mergeIntervals, overlapS } from '../../../packages/analysis/src/signal/intervals.ts';
import { runs } from '../../support/runs.ts';

test('a span holds its start and not its end', () => {
  const span = { fromS: 1, toS: 3 };
  expect([0.9, 1, 2.9, 3].map((timeS) => contains(span, timeS))).toEqual([false, true, true, false]);
});

test('length and overlap are never negative', () => {
  expect([durationS({ fromS: 1, toS: 3 }), durationS({ fromS: 3, toS: 1 })]).toEqual([2, 0]);
  expect(overlapS({ fromS: 0, toS: 2 }, { fromS: 1, toS: 5 })).toBe(1);
  expect(overlapS({ fromS: 0, toS: 1 }, { fromS: 1, toS: 2 })).toBe(0);
  expect(overlapS({ fromS: 0, toS: 1 }, { fromS: 4, toS: 5 })).toBe(0);
});

test('spans that overlap or touch become one, empty ones go', () => {
  const merged = mergeIntervals([
    { fromS: 5, toS: 6 },
    { fromS: 1, toS: 2 },
    { fromS: 2, toS: 3 },
    { fromS: 9, toS: 9 },
    { fromS: 1.5, toS: 1.7 },
  ]);
  expect(merged).toEqual([
    { fromS: 1, toS: 3 },
    { fromS: 5, toS: 6 },
  ]);
  expect(mergeIntervals([])).toEqual([]);
});

test('law: merging keeps exactly the same instants', () => {
  const span = fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 }));
  fc.assert(
    fc.property(fc.array(span, { maxLength: 12 }), (pairs) => {
      const spans = pairs.map(([fromS, toS]) => ({ fromS, toS }));
      const merged = mergeIntervals(spans);
      for (let timeS = -0.5; timeS < 41; timeS += 0.5) {
        expect(merged.some((one) => contains(one, timeS))).toBe(spans.some((one) => contains(one, timeS)));
      }
      for (let i = 1; i < merged.length; i++) expect(merged[i].fromS).toBeGreaterThan(merged[i - 1].toS);
    }),
    runs(100, 1000),
  );
});
