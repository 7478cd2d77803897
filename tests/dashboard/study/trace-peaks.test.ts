import { expect, test } from 'vitest';
import { nextTime, tracePeaks } from '../../../apps/dashboard/src/study/trace-peaks.ts';
import { raisedLine } from '../../support/recount-line.ts';

test('every top of a line is a peak, at its own time', () => {
  expect(tracePeaks(raisedLine(4))).toEqual([1, 3, 5, 7]);
});

test('a small wave is no peak, a small raise is one', () => {
  const small = (share: number): number[] => {
    const line = raisedLine(3);
    const values = line.values.map((value, at) => (line.timesS[at] > 2 && line.timesS[at] < 4 ? share * value : value));
    return tracePeaks({ ...line, values });
  };
  expect(small(0.05)).toEqual([1, 5]);
  expect(small(0.2)).toEqual([1, 3, 5]);
});

test('a line that ends at its top has a last peak; one that is level or empty has none', () => {
  const line = raisedLine(2);
  expect(tracePeaks({ timesS: line.timesS.slice(0, 30), values: line.values.slice(0, 30) })).toEqual([1, 2.9]);
  expect(tracePeaks({ ...line, values: line.values.map(() => 3) })).toEqual([]);
  expect(tracePeaks({ timesS: new Float64Array(), values: new Float64Array() })).toEqual([]);
});

test('holes are passed over', () => {
  const line = raisedLine(2);
  const values = line.values.map((value, at) => (at > 12 && at < 18 ? Number.NaN : value));
  expect(tracePeaks({ ...line, values })).toEqual([1, 3]);
});

test('the next time is another one than where one stands', () => {
  expect([nextTime([1, 3], 1, 1), nextTime([1, 3], 1, -1), nextTime([1, 3], 2, -1)]).toEqual([3, undefined, 1]);
});
