import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findGaps, longestGapS } from '../../../packages/analysis/src/signal/gaps.ts';
import { arbitraryTimes } from '../../support/arbitraries.ts';
import { runs } from '../../support/runs.ts';

test('an interval longer than the rule is a gap from the sample before to the sample after', () => {
  expect(findGaps(Float64Array.of(0, 0.1, 0.2, 1.2, 1.3), 0.25)).toEqual([{ fromS: 0.2, toS: 1.2 }]);
});

test('an interval of just the length of the rule is none', () => {
  expect(findGaps(Float64Array.of(0, 0.25, 0.5), 0.25)).toEqual([]);
});

test('no samples and one sample hold no gap', () => {
  expect([findGaps(new Float64Array(0), 1), findGaps(Float64Array.of(3), 1)]).toEqual([[], []]);
});

test('the longest gap in a span counts only the part inside', () => {
  const gaps = [
    { fromS: 1, toS: 2 },
    { fromS: 5, toS: 5.5 },
  ];
  expect(longestGapS(gaps, 0, 10)).toBe(1);
  expect(longestGapS(gaps, 1.75, 10)).toBe(0.5);
  expect(longestGapS(gaps, 2, 5)).toBe(0);
});

test('law: gaps move with the clock', () => {
  fc.assert(
    fc.property(arbitraryTimes(1, 50), fc.integer({ min: -64, max: 64 }), (timesS, shiftS) => {
      const moved = findGaps(
        timesS.map((timeS) => timeS + shiftS),
        0.1005,
      );
      expect(moved.length).toBe(findGaps(timesS, 0.1005).length);
    }),
    runs(50, 500),
  );
});

test('a rule of 0 is refused', () => {
  expect(() => findGaps(Float64Array.of(0, 1), 0)).toThrow(expect.objectContaining({ code: 'out-of-range' }));
});
