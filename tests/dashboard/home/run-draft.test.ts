import { expect, test } from 'vitest';
import { emptyRun, isRunPressable, runFilled, runOf, runPressed } from '../../../apps/dashboard/src/home/run-draft.ts';
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
    cadencePerMin: null,
    left: null,
    right: 3,
  });
  expect(runOf({ by: 'way', amount: 1500, pain: { left: null } }, '2026-11-30')).toMatchObject({
    durationS: null,
    distanceM: 1500,
    cadencePerMin: null,
    left: null,
  });
});

test('a run that was read keeps its seconds, metres and day; what is pressed over it is its own', () => {
  const cadence = { counted: 83, as: 'one-foot', perMin: 166 } as const;
  const read = { day: '2026-11-28', movingS: 754, distanceM: 2137, cadence, fileSha256: 'ab'.repeat(32) };
  const byTime = runFilled({ by: 'time', amount: 5, pain: { right: 2 } }, read);
  expect(byTime.amount).toBe(13);
  const whole = { day: '2026-11-28', durationS: 754, distanceM: 2137, cadencePerMin: 166, left: null, right: 2 };
  expect(runOf(byTime, '2026-11-30')).toEqual(whole);
  expect(runOf(runPressed(byTime, 1), '2026-11-30')).toEqual({ ...whole, durationS: 14 * 60 });
  const byWay = runFilled({ by: 'way', amount: 1000, pain: { right: 2 } }, read);
  expect(byWay.amount).toBe(2100);
  expect(runOf(byWay, '2026-11-30')).toEqual(whole);
  expect(runOf({ ...byWay, amount: 2500 }, '2026-11-30')).toEqual({ ...whole, distanceM: 2500 });
});
