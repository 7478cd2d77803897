import { expect, test } from 'vitest';
import { listGaps, medianIntervalS } from '../../packages/records/src/gaps.ts';

test('the median interval is the middle one of the sorted intervals', () => {
  expect(medianIntervalS(Float64Array.of(0, 1))).toBe(1);
  expect(medianIntervalS(Float64Array.of(0, 1, 3))).toBe(1.5);
  expect(medianIntervalS(Float64Array.of(0, 5, 6, 8))).toBe(2);
});

test('a missing sample makes a gap from the sample before to the sample after', () => {
  expect(listGaps(Float64Array.of(0, 1, 2, 4, 5, 9), 1)).toEqual([
    { fromS: 2, toS: 4, missingCount: 1 },
    { fromS: 5, toS: 9, missingCount: 3 },
  ]);
});

test('jitter of less than half an interval is no gap', () => {
  expect(listGaps(Float64Array.of(0, 1.45, 2, 3.3, 3.6), 1)).toEqual([]);
  expect(listGaps(Float64Array.of(0, 1.5), 1)).toEqual([{ fromS: 0, toS: 1.5, missingCount: 1 }]);
});
