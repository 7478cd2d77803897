import { expect, test } from 'vitest';
import {
  beginOf,
  emptyReach,
  inUnit,
  type ReachDraft,
  reachDraftOf,
  reachOf,
  reachProblems,
} from '../../../apps/dashboard/src/course/reach-draft.ts';

const on = '2026-03-04';
const left: ReachDraft = { ...emptyReach, side: 'left' };

test('a leg and at least one trial are needed, or that it was left out', () => {
  expect(reachProblems(emptyReach)).toEqual({ reachSide: 'side-missing', trials: 'trials-missing' });
  expect(reachProblems({ ...left, trials: [null, 9, null] })).toEqual({});
  expect(reachProblems({ ...left, skipped: 'pain' })).toEqual({});
});

test('trials that were not taken are none, and a reach of zero is one', () => {
  expect(reachOf({ ...left, trials: [null, 9, 0] }, on).trials).toEqual([9, 0]);
  expect(reachOf({ ...left, trials: [8, 9, 10], skipped: 'other' }, on)).toMatchObject({
    trials: [],
    skipped: 'other',
  });
  expect(reachDraftOf(reachOf({ ...left, trials: [8, null, null] }, on))).toEqual({ ...left, trials: [8, null, null] });
});

test('a stepper begins where the trial before it ended, else where the rule says, in the unit of the test', () => {
  expect([0, 1, 2].map((at) => beginOf({ ...left, trials: [11.5, null, null] }, at))).toEqual([8, 11.5, 11.5]);
  expect(beginOf(inUnit(left, 'deg'), 0)).toBe(35);
});

test('a number of centimetres is no number of degrees', () => {
  const told = { ...left, trials: [11.5, 12, null] };
  expect(inUnit(told, 'deg').trials).toEqual([null, null, null]);
  expect(inUnit(told, 'cm')).toBe(told);
});
