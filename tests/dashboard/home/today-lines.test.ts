import { type HandoutLine, wordsHome } from '@surae/exchange';
import { expect, test } from 'vitest';
import {
  afterLegs,
  daysDone,
  doneOn,
  exercisesOn,
  isOver,
  linesOn,
  runBreak,
  runLimitOn,
  setWords,
} from '../../../apps/dashboard/src/home/today-lines.ts';
import { homeExercise, homeRun } from '../../support/home-lines.ts';

const plan: readonly HandoutLine[] = [
  homeExercise('seated-raise', { until: '2026-12-05' }),
  wordsHome('rest on Sunday', 'both', '2026-11-29'),
  homeExercise('one-leg-raise', { from: '2026-12-01' }),
  homeRun({ from: '2026-12-01' }),
];
const places = (day: string): readonly number[] => exercisesOn({ plan }, day).map(({ place }) => place);

test('what is not begun yet, or is over, is not of today; the place stays that of the whole plan', () => {
  expect(['2026-11-28', '2026-11-29', '2026-12-01', '2026-12-05', '2026-12-06'].map(places)).toEqual([
    [],
    [0],
    [0, 2],
    [0, 2],
    [2],
  ]);
  expect(linesOn({ plan }, '2026-12-06').map(({ line: { of } }) => of)).toEqual(['words', 'exercise', 'running']);
});

test('runs have a limit only where one was confirmed and holds', () => {
  expect(runLimitOn({ plan }, '2026-11-30')).toBeUndefined();
  expect(runLimitOn({ plan }, '2026-12-01')).toBe(plan[3]);
  expect(runLimitOn({ plan: plan.slice(0, 3) }, '2026-12-01')).toBeUndefined();
});

const done = (day: string, place = 0, planKey = 7) =>
  ({ day, planKey, place, code: 'seated-raise', side: 'both', sets: 3, pain: null }) as const;

test('what was done is found by the plan, the line and the day', () => {
  const all = [done('2026-11-29'), done('2026-11-30', 2), done('2026-11-30', 0, 8)];
  expect(doneOn(all, 7, 0, '2026-11-29')).toBe(all[0]);
  expect(doneOn(all, 7, 0, '2026-11-30')).toBeUndefined();
});

test('the last seven days are this one and six before it', () => {
  const all = ['2026-11-23', '2026-11-24', '2026-11-30', '2026-12-01'].map((day) => done(day));
  expect(daysDone(all, 7, 0, '2026-11-30')).toBe(2);
  expect(daysDone([...all, done('2026-11-30')], 7, 0, '2026-11-30')).toBe(2);
});

const run = (day: string, durationS: number | null = 300, distanceM: number | null = null) => ({
  day,
  durationS,
  distanceM,
  cadencePerMin: null,
  left: null,
  right: 1,
});

test('after a run comes the break that was agreed on', () => {
  const limit = homeRun();
  expect(runBreak([], limit, '2026-11-30')).toBeUndefined();
  const days = ['2026-11-29', '2026-11-30', '2026-12-01'].map((day) => runBreak([run('2026-11-29')], limit, day)?.next);
  expect(days).toEqual(['2026-12-01', '2026-12-01', null]);
  // a month may end in it
  expect(runBreak([run('2026-12-31')], limit, '2026-12-31')?.next).toBe('2027-01-02');
  const none = homeRun({ run: { ...limit.run!, daysBetween: 0 } });
  expect(runBreak([run('2026-11-29')], none, '2026-11-29')).toEqual({ last: '2026-11-29', next: null });
  // a day to come by a wrong clock does not count
  expect(runBreak([run('2026-12-24')], limit, '2026-11-30')).toBeUndefined();
});

test('a run is more than its limit only in what the limit is told in', () => {
  const time = homeRun();
  const way = homeRun({ run: { ...time.run!, mostS: null, mostM: 1000 } });
  expect([300, 301].map((seconds) => isOver(time, run('2026-11-29', seconds)))).toEqual([false, true]);
  expect([1000, 1500].map((metres) => isOver(way, run('2026-11-29', null, metres)))).toEqual([false, true]);
  expect(isOver(way, run('2026-11-29', 36_000))).toBe(false);
  expect(isOver({ run: null }, run('2026-11-29', 36_000))).toBe(false);
});

test('pain after the exercises is asked of a leg that mornings are asked of, once something was done with it', () => {
  expect(afterLegs('right', [])).toEqual([]);
  expect(afterLegs('right', ['left'])).toEqual([]);
  expect(afterLegs('right', ['left', 'both'])).toEqual(['right']);
  expect(afterLegs('both', ['left'])).toEqual(['left']);
  expect(afterLegs('both', ['right', 'left'])).toEqual(['left', 'right']);
});

test('a set is so many times, one hold, or so many holds', () => {
  expect(setWords({ repetitions: 15, holdS: null })).toBe('A set is 15 times.');
  expect(setWords({ repetitions: null, holdS: 45 })).toBe('A set is one hold of 45 s.');
  expect(setWords({ repetitions: 4, holdS: 3 })).toBe('A set is 4 holds of 3 s.');
  expect(setWords({ repetitions: null, holdS: null })).toBeNull();
});
