import { expect, test } from 'vitest';
import {
  type ChartSeries,
  nextMark,
  spanOf,
  stretchWords,
  valueAt,
} from '../../../apps/dashboard/src/charts/readings.ts';

function series(times: readonly number[], values: readonly number[]): ChartSeries {
  return {
    label: 'height',
    unit: 'm',
    times: Float64Array.from(times),
    values: Float64Array.from(values),
    decimals: 1,
    dash: [],
    side: null,
  };
}

test('a value between two samples lies on the straight line between them', () => {
  const line = series([0, 1, 3], [0, 10, 20]);
  expect([0, 0.25, 1, 2, 3].map((timeS) => valueAt(line, timeS))).toEqual([0, 2.5, 10, 15, 20]);
});

test('outside the samples there is no value', () => {
  expect(valueAt(series([1, 2], [5, 6]), 0.99)).toBeUndefined();
  expect(valueAt(series([1, 2], [5, 6]), 2.01)).toBeUndefined();
  expect(valueAt(series([], []), 0)).toBeUndefined();
  expect(valueAt(series([1], [5]), 1)).toBe(5);
});

test('the span is from the first to the last sample of all lines', () => {
  expect(spanOf([series([2, 5], [0, 0]), series([], []), series([1, 3], [0, 0])])).toEqual({ fromS: 1, toS: 5 });
  expect(spanOf([series([], [])])).toBeUndefined();
});

test('from mark to mark, forwards and back, and nowhere after the last', () => {
  const marks = [1, 3, 5].map((atS) => ({ atS, label: `${atS}` }));
  expect(nextMark(marks, 3, 1)?.atS).toBe(5);
  expect(nextMark(marks, 3, -1)?.atS).toBe(1);
  expect(nextMark(marks, 3.5, -1)?.atS).toBe(3);
  expect(nextMark(marks, 5, 1)).toBeUndefined();
  expect(marks.map(({ atS }) => atS)).toEqual([1, 3, 5]);
});

test('a stretch of time has tenths only where it is shorter than a second', () => {
  expect([stretchWords(3 * 0.1, 4 * 0.1), stretchWords(100.2, 100.4)]).toEqual(['0.3–0.4', '100.2–100.4']);
  expect([stretchWords(2, 4), stretchWords(1050, 1100)]).toEqual(['2–4', '1050–1100']);
});
