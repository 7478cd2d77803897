import { expect, test } from 'vitest';
import type { Raise } from '../../../../packages/analysis/src/raises/detection.ts';
import { unseenChances, unseenRoom, withUnseen } from '../../../../packages/analysis/src/raises/heel/unseen.ts';

const raise = (topS: number): Raise => ({
  startS: topS - 0.6,
  startUS: 0.02,
  topS,
  topUS: 0.01,
  endS: topS + 0.6,
  endUS: 0.02,
  highFromS: topS - 0.1,
  highToS: topS + 0.1,
  heightM: 0.1,
  heightUM: 0.002,
  probability: 1,
  longestGapS: 0,
  topInGap: false,
});
const set = [2, 4, 6, 8, 12, 14, 16, 18].map(raise);

test('a beat that a gap swallowed whole is put back, with its top in the gap', () => {
  const all = withUnseen(set, [{ fromS: 9.2, toS: 10.8 }]);
  expect(all.length).toBe(9);
  expect(all[4]).toMatchObject({ topS: 10, topInGap: true });
  expect(all[4].heightUM).toBeGreaterThan(0.04);
});

test('a pause stays a pause: without a gap, with a short one, and off the beat', () => {
  expect(withUnseen(set, []).length).toBe(8);
  expect(withUnseen(set, [{ fromS: 9.8, toS: 10.2 }]).length).toBe(8);
  const offBeat = [2, 4, 6, 8, 11.1, 13.1, 15.1].map(raise);
  expect(withUnseen(offBeat, [{ fromS: 9, toS: 10 }]).length).toBe(7);
});

test('too few repetitions show no beat', () => {
  expect(withUnseen([2, 6].map(raise), [{ fromS: 3, toS: 5 }]).length).toBe(2);
});

test('room for one more across a gap is an even chance', () => {
  expect(unseenChances(set, [{ fromS: 9.5, toS: 10.5 }])).toEqual([0.5]);
  expect(unseenChances(set, [])).toEqual([]);
});

test('nothing is put into a gap of twenty seconds: it has room for nine, and none of them speaks for the lower bound', () => {
  const apart = [2, 4, 6, 8, 28, 30, 32, 34].map(raise);
  const gaps = [{ fromS: 9, toS: 27 }];
  expect(withUnseen(apart, gaps)).toEqual(apart);
  expect(unseenChances(apart, gaps)).toEqual([]);
  expect(unseenRoom(apart, gaps)).toBe(9);
  expect(unseenRoom(set, [{ fromS: 9.2, toS: 10.8 }])).toBe(0);
  expect(unseenRoom([raise(2)], gaps)).toBe(0);
});
