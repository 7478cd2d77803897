import { expect, test } from 'vitest';
import { listGaps, medianIntervalS } from '../../packages/records/src/gaps.ts';

test('the median interval is the middle one of the sorted intervals', () => {
  expect(medianIntervalS(Float64Array.of(0, 1))).toBe(1);
  expect(medianIntervalS(Float64Array.of(0, 1, 3))).toBe(1.5);
  expect(medianIntervalS(Float64Array.of(0, 5, 6, 8))).toBe(2);
});

/** The definition, slow and obvious. */
function sortedMedian(timesS: Float64Array): number {
  const intervals = Array.from(timesS.subarray(1), (timeS, i) => timeS - timesS[i]).sort((a, b) => a - b);
  const middle = intervals.length / 2;
  return (intervals[Math.ceil(middle) - 1] + intervals[Math.floor(middle)]) / 2;
}

test.each([
  ['an even clock', (i: number) => Math.round(i * 5) / 1e4],
  ['a clock that slows down', (i: number) => (i / 1e4) ** 2 + i / 1e3],
  ['two rates, one for half of the time', (i: number) => (i < 15_000 ? i : 2 * i - 15_000) / 1e3],
  ['two rates, every other interval', (i: number) => (3 * (i >> 1) + (i & 1)) / 1e3],
])('the median of a long recording is that of all its intervals: %s', (_, timeOf) => {
  for (const count of [30_000, 30_001, 45_678]) {
    const timesS = Float64Array.from({ length: count }, (_, i) => timeOf(i));
    expect(medianIntervalS(timesS)).toBe(sortedMedian(timesS));
  }
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
