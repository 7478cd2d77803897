import { expect, test } from 'vitest';
import { lowerRail, upperRail } from '../../../packages/analysis/src/signal/rail.ts';

test('a wave cut off at 2 sits at 2 from its first to its last top', () => {
  const wave = Float64Array.of(0, 1.5, 2, 2, 2, 1.2, 0.1, 1.4, 2, 2, 2, 2, 0.3);
  expect(upperRail(wave)).toEqual({ value: 2, count: 7, fromIndex: 2, toIndex: 12 });
  expect(lowerRail(wave.map((value) => -value))).toEqual({ value: -2, count: 7, fromIndex: 2, toIndex: 12 });
});

test('a single stay, stays of two samples and a signal that never moves are no limit', () => {
  expect(upperRail(Float64Array.of(0, 2, 2, 2, 0, 1))).toBeUndefined();
  expect(upperRail(Float64Array.of(0, 2, 2, 0, 2, 2, 0, 2, 2, 1))).toBeUndefined();
  expect(upperRail(new Float64Array(50).fill(3))).toBeUndefined();
  expect(upperRail(new Float64Array(0))).toBeUndefined();
});

test('a coarse sensor that lingers below its greatest value as well turned by itself', () => {
  const steps = Float64Array.of(0, 1, 1, 1, 2, 2, 2, 1, 1, 1, 0, 1, 1, 2, 2, 2, 1, 1, 0);
  expect(upperRail(steps)).toBeUndefined();
});

test('a greater value begins anew: stays before it are of no limit', () => {
  const climbing = Float64Array.of(2, 2, 2, 0, 2, 2, 2, 0, ...new Array<number>(20).fill(5), 1, 0);
  expect(upperRail(climbing)).toBeUndefined();
  const after = Float64Array.of(2, 2, 2, 0, 5, 5, 5, 5, 5, 1, 5, 5, 5, 5, 5, Number.NaN, 5, 0);
  expect(upperRail(after)).toEqual({ value: 5, count: 11, fromIndex: 4, toIndex: 17 });
});
