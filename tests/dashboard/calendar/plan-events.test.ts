import { expect, test } from 'vitest';
import { isOn, planCalendar } from '../../../apps/dashboard/src/calendar/plan-events.ts';
import { HOME_HANDOUT } from '../../support/home-address.ts';
import { homeExercise, homeRun } from '../../support/home-lines.ts';

// 5 January 2026 is a Monday
const day = '2026-01-05';
const of = (...plan: (typeof HOME_HANDOUT)['plan'][number][]) => ({ ...HOME_HANDOUT, day, plan });

test('each line with days is an event in plain words, and the morning is one of every day', () => {
  const until = '2026-02-01';
  const calendar = planCalendar(
    of(homeExercise('one-leg-raise', { from: day, until }), homeRun({ from: day, until })),
    day,
    0,
  );
  expect(calendar.events.map(({ uid, title, first, last }) => [uid, title, first, last])).toEqual([
    ['surae-4711-morning', 'Morning: first steps', day, '2026-01-30'],
    ['surae-4711-0', expect.stringMatching(/: right leg$/), day, '2026-01-30'],
    ['surae-4711-1', expect.stringMatching(/, 5 min of running at most$/), day, '2026-01-30'],
  ]);
  expect(calendar).toMatchObject({ isOpen: false, leftOut: [], gone: [], sequence: 2196 });
  expect(calendar.events[1]?.text).toMatch(/^Right leg, 3 sets of 15.*More pain than agreed/);
});

test('a line without an end stands for 28 days from the day of saving, in step with the plan', () => {
  const open = of(homeExercise('one-leg-raise', { from: day, perWeek: 1 }));
  expect(planCalendar(open, day, 0).events[1]).toMatchObject({ first: day, last: '2026-01-26' });
  // saved on a Thursday: the next Monday is the first day
  expect(planCalendar(open, '2026-01-08', 0).events[1]).toMatchObject({ first: '2026-01-12', last: '2026-02-02' });
  expect(planCalendar(open, day, 0).isOpen).toBe(true);
});

test('what is over, and what has no days, is in no event; words of the clinic are left out and told', () => {
  const over = homeExercise('one-leg-raise', { from: '2025-11-01', until: '2026-01-04' });
  const unsaid = homeExercise('one-leg-hold', { from: day, perWeek: null });
  const [, , , , advice] = HOME_HANDOUT.plan;
  const calendar = planCalendar(of(over, unsaid, advice), day, 0);
  expect(calendar.events.map(({ uid }) => uid)).toEqual(['surae-4711-morning']);
  expect(calendar.leftOut).toEqual([unsaid, advice]);
});

test('places that an earlier file filled are taken away where this plan has none, and a newer plan counts up', () => {
  const calendar = planCalendar(of(homeExercise('one-leg-raise', { from: day })), day, 3);
  expect(calendar.gone).toEqual(['surae-4711-1', 'surae-4711-2']);
  const later = planCalendar({ ...of(), day: '2026-01-06' }, '2026-01-06', 1);
  expect(later.gone).toEqual(['surae-4711-0']);
  expect(later.sequence).toBe(calendar.sequence + 1);
});

test('a rhythm is known on either side of its beginning', () => {
  const rhythm = { weeks: 2, places: [0, 3] };
  const days = ['2025-12-22', '2025-12-25', '2025-12-29', '2026-01-05', '2026-01-08', '2026-01-12', '2026-01-19'];
  expect(days.map((one) => isOn(rhythm, day, one))).toEqual([true, true, false, true, true, false, true]);
});
