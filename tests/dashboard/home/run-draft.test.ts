import { expect, test } from 'vitest';
import { emptyRun, isRunPressable, runOf, runPressed } from '../../../apps/dashboard/src/home/run-draft.ts';
import { homeRun } from '../../support/home-lines.ts';

const limit = homeRun().run!;

test('a run begins at its limit, in what the limit is told in', () => {
  expect(emptyRun({ run: { ...limit, mostS: 600 } })).toMatchObject({ by: 'time', amount: 10 });
  expect(emptyRun({ run: { ...limit, mostS: null, mostM: 2500 } })).toMatchObject({ by: 'way', amount: 2500 });
  // no running for now: somebody may have run all the same
  expect(emptyRun({ run: { ...limit, mostS: 0 } })).toMatchObject({ by: 'time', amount: 5 });
});

test('presses never come to no run, nor beyond what can be told', () => {
  const one = { by: 'time', amount: 2, pain: {} } as const;
  expect(runPressed(one, -1).amount).toBe(1);
  expect(runPressed(one, -5).amount).toBe(1);
  expect(isRunPressable({ ...one, amount: 1 }, -1)).toBe(false);
  expect(isRunPressable({ ...one, amount: 180 }, 1)).toBe(false);
  expect(runPressed({ by: 'way', amount: 1000, pain: {} }, 1).amount).toBe(1500);
});

test('what was told is a run; a leg that was not asked is open', () => {
  expect(runOf({ by: 'time', amount: 12, pain: { right: 3 } }, '2026-11-30')).toEqual({
    day: '2026-11-30',
    durationS: 720,
    distanceM: null,
    left: null,
    right: 3,
  });
  expect(runOf({ by: 'way', amount: 1500, pain: { left: null } }, '2026-11-30')).toMatchObject({
    durationS: null,
    distanceM: 1500,
    left: null,
  });
});
