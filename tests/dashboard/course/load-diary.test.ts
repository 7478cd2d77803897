import type { DoneItem, OnFeet, Run } from '@surae/casebook';
import { describe, expect, test } from 'vitest';
import { type LoadPast, loadDiary } from '../../../apps/dashboard/src/course/load-diary.ts';
import { advisedPerson, inMarch, madeDone, type Past } from '../../support/advised-person.ts';
import { madeExercise } from '../../support/plan-items.ts';

const today = inMarch(31);
const plan = { day: 10, items: [madeExercise('one-leg-raise', { side: 'right', from: inMarch(10) })] };
const item = 'item-10-0';
const nobody = { left: null, right: null };
const entry = <Body>(body: Body) => ({ id: JSON.stringify(body), author: 'test', at: `${today}T10:00:00Z`, body });

interface More {
  readonly runs?: readonly Partial<Run>[];
  readonly feet?: readonly OnFeet[];
}

function past(given: Past, { runs = [], feet = [] }: More = {}): LoadPast {
  return {
    ...advisedPerson(given),
    runs: runs.map((one) => entry({ on: today, durationS: null, distanceM: null, pain: nobody, ...one })),
    onFeet: feet.map(entry),
  };
}

const done = (day: number, changes: Partial<DoneItem> = {}): DoneItem =>
  madeDone(item, day, { sets: 3, repetitions: 15, ...changes });

function dayOf(diary: ReturnType<typeof loadDiary>, day: number) {
  return diary?.days.find(({ on }) => on === inMarch(day));
}

describe('the diary', () => {
  test('has every day from the first that anything was planned or written down, and two weeks at least', () => {
    const diary = loadDiary(past({ plans: [plan], done: [done(12)] }), today);
    expect(diary?.days.map(({ on }) => on)).toEqual(Array.from({ length: 22 }, (_, i) => inMarch(10 + i)));
    const short = loadDiary(past({ done: [madeDone(null, 30)] }), today);
    expect(short?.days[0]?.on).toBe(inMarch(18));
    expect(short?.days).toHaveLength(14);
  });

  test('goes back six weeks at most, and is none where nothing lies in them', () => {
    const old = past({}, { runs: [{ on: '2025-12-01', durationS: 600 }] });
    expect(loadDiary(old, today)).toBeNull();
    const both = past({}, { runs: [{ on: '2025-12-01', durationS: 600 }, { durationS: 600 }] });
    expect(loadDiary(both, today)?.days).toHaveLength(42);
    expect(loadDiary(past({}), today)).toBeNull();
  });

  test('has nothing for a day that nobody wrote down: no zero of load, run or hours', () => {
    const diary = loadDiary(past({ plans: [plan], done: [done(12)] }), today);
    expect(dayOf(diary, 13)).toMatchObject({ run: null, feetH: null, legs: { right: { done: null } } });
    expect(dayOf(diary, 12)?.legs.right.done?.asRaiseS).toEqual([270, 270]);
    expect(dayOf(diary, 12)?.legs.left.done).toBeNull();
    // what is planned is one session, on the days on which the plan holds
    expect(dayOf(diary, 13)?.legs.right.planned?.asRaiseS).toEqual([270, 270]);
    expect(dayOf(diary, 13)?.legs.left.planned).toBeNull();
  });

  test('adds the runs of a day, and does not where one of them does not tell', () => {
    const runs = [
      { on: inMarch(30), durationS: 600, distanceM: 1500 },
      { on: inMarch(30), durationS: 300, distanceM: null },
    ];
    const diary = loadDiary(past({}, { runs: runs.map((one) => ({ ...one })) }), today);
    expect(dayOf(diary, 30)?.run).toEqual({ durationS: 900, distanceM: null });
  });

  test('takes the hours on the feet that were written last, and none at all as none', () => {
    const feet = [
      { on: inMarch(29), hours: 8 },
      { on: inMarch(29), hours: 6 },
      { on: inMarch(30), hours: 0 },
    ];
    const diary = loadDiary(past({}, { feet }), today);
    expect([29, 30, 31].map((day) => dayOf(diary, day)?.feetH)).toEqual([6, 0, null]);
  });

  test('counts a week for the days on which a line held, and calls the rest of its sessions unknown', () => {
    const diary = loadDiary(past({ plans: [plan], done: [done(26), done(28), madeDone(null, 29)] }), today);
    const [newest, ...older] = diary!.weeks;
    expect([newest.from, newest.until]).toEqual([inMarch(25), inMarch(31)]);
    expect(newest.lines).toMatchObject([
      { leg: 'right', sessionsPlanned: 3, sessionsLogged: 2, sessionsUnknown: 1, item: { code: 'one-leg-raise' } },
    ]);
    expect(newest.ownWords).toBe(1);
    // the first week has one day alone
    expect(older.at(-1)).toMatchObject({ from: inMarch(10), until: inMarch(10), lines: [{ sessionsPlanned: 0 }] });
  });

  test('does not plan a line that a later visit left out', () => {
    const later = { day: 20, items: [madeExercise('two-leg-raise', { side: 'right', from: inMarch(20) })] };
    const diary = loadDiary(past({ plans: [plan, later] }), today);
    expect(dayOf(diary, 19)?.legs.right.planned?.asRaiseS).toEqual([270, 270]);
    expect(dayOf(diary, 20)?.legs.right.planned?.asRaiseS).toEqual([135, 135]);
    expect(diary?.items.map(({ code }) => code)).toEqual(['one-leg-raise', 'two-leg-raise']);
  });
});
