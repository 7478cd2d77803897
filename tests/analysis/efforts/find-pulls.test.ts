import { effortDefaults } from '@surae/analysis';
import { expect, test } from 'vitest';
import { findPulls } from '../../../packages/analysis/src/efforts/find-pulls.ts';

const rule = effortDefaults.pull;

/** A signal made of straight pieces: pairs of a level and the values that it lasts. */
function pieces(...parts: (readonly [number, number])[]): Float64Array {
  return Float64Array.from(parts.flatMap(([level, count]) => Array<number>(count).fill(level)));
}

const reasons = (rise: Float64Array): unknown[] => findPulls(rise, 0.01, 20, rule).map(({ rejected }) => rejected);

test('half of a pull is crossed where it should be', () => {
  const rise = Float64Array.from({ length: 300 }, (_, i) => Math.max(0, 100 - Math.abs(i - 150)));
  expect(findPulls(rise, 0.01, 20, rule)).toMatchObject([
    { topIndex: 150, fromIndex: 101, toIndex: 200, rejected: null },
  ]);
});

test('pulls, knocks, small ones, and one that the end cuts off', () => {
  expect(reasons(pieces([0, 100]))).toEqual([]);
  expect(reasons(pieces([0, 100], [500, 100], [0, 100]))).toEqual([null]);
  expect(reasons(pieces([0, 100], [500, 20], [0, 100], [500, 50], [0, 50]))).toEqual(['knock', null]);
  expect(reasons(pieces([0, 100], [500, 100], [0, 100], [40, 100], [0, 50]))).toEqual([null, 'too-small']);
  expect(reasons(pieces([0, 100], [500, 100], [0, 100], [500, 100]))).toEqual([null, 'cut-off']);
  expect(reasons(pieces([500, 100], [0, 100], [500, 100], [0, 9]))).toEqual(['cut-off', null]);
});

test('a valley above half of the pulls parts nothing, one below half does', () => {
  expect(reasons(pieces([0, 100], [500, 100], [300, 60], [500, 100], [0, 100]))).toEqual([null]);
  expect(reasons(pieces([0, 100], [500, 100], [200, 60], [500, 100], [0, 100]))).toEqual([null, null]);
});
