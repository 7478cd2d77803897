import { expect, test } from 'vitest';
import { findSlips, withoutSlips } from '../../../packages/analysis/src/movement/pitch-slip.ts';

const rule = { sideS: 2.5, leastRad: 0.02, greatestRad: 0.35 };
const ones = new Float64Array(3000).fill(1);
const stepAt = (index: number, size: number): Float64Array =>
  Float64Array.from({ length: 3000 }, (_, i) => 0.004 * Math.sin(i / 30) + (i >= index ? size : 0));

test('a lasting step is found where it is, with its size', () => {
  const slips = findSlips(stepAt(1400, 0.09), ones, ones, 100, rule);
  expect(slips.length).toBe(1);
  expect(Math.abs(slips[0].index - 1400)).toBeLessThan(10);
  expect(Math.abs(slips[0].turnRad - 0.09)).toBeLessThan(0.005);
});

test('a difference that only swings holds no slip', () => {
  expect(findSlips(stepAt(5000, 1), ones, ones, 100, rule)).toEqual([]);
});

test('no comparison reaches across a gap', () => {
  const trusted = Float64Array.from(ones, (_, i) => (i > 1390 && i < 1430 ? 0 : 1));
  expect(findSlips(stepAt(1400, 0.09), ones, trusted, 100, rule)).toEqual([]);
});

test('the tilt without its slips goes on as before', () => {
  const tilt = Float64Array.of(1, 1, 3, 3, 2);
  expect([
    ...withoutSlips(tilt, [
      { index: 2, turnRad: 2 },
      { index: 4, turnRad: -1 },
    ]),
  ]).toEqual([1, 1, 1, 1, 1]);
});
