import type { DoneItem, PlanItem } from '@surae/casebook';
import { expect, test } from 'vitest';
import { courseGiven, morningPassed, plannedDays } from '../../../apps/dashboard/src/advice/course-given.ts';
import { advisedPerson, inMarch, madeDone, madeMorningChecks, type Past } from '../../support/advised-person.ts';
import { madeExercise } from '../../support/plan-items.ts';

const today = inMarch(31);

function line(changes: Partial<PlanItem> = {}): PlanItem {
  return madeExercise('one-leg-raise', { side: 'right', from: inMarch(25), repetitions: 10, perWeek: 7, ...changes });
}

const plans = [{ day: 25, items: [line()] }];
const daily = (from: number, to: number): readonly DoneItem[] =>
  Array.from({ length: to - from + 1 }, (_, i) => madeDone('item-25-0', from + i));

function right(past: Past, limit = 5) {
  return courseGiven(advisedPerson(past), 'right', today, limit);
}

test('sessions and mornings of a plan are told with their days', () => {
  const facts = right({ plans, done: daily(25, 30), mornings: madeMorningChecks(10, 31) });
  expect(facts['share-done-last']).toMatchObject({ value: 1, from: { day: inMarch(30) } });
  expect(facts['pain-during-last']).toMatchObject({ value: 2 });
  expect(facts['morning-rise-last']).toMatchObject({ value: 0 });
  expect(facts['sessions-logged']).toMatchObject({ value: 6 });
  expect(facts['last-logged']).toMatchObject({ value: 'yes' });
  expect(facts['missed-in-row']).toMatchObject({ value: 0 });
  expect(facts['worst-pain-lately']).toMatchObject({ value: 2 });
});

test('without a plan nothing was planned, and nothing that was not logged is counted', () => {
  const facts = right({});
  for (const code of ['sessions-logged', 'last-logged', 'missed-in-row', 'hard-days', 'morning-logged']) {
    expect(facts[code], code).toEqual({ missing: 'no-plan' });
  }
  expect(facts['worst-pain-lately']).toEqual({ missing: 'no-session' });
  expect(facts['pain-during-last']).toEqual({ missing: 'no-session' });
});

test('a plan that does not say how often counts no session as left out', () => {
  const facts = right({ plans: [{ day: 25, items: [line({ perWeek: null })] }], done: daily(25, 26) });
  for (const code of ['last-logged', 'missed-in-row', 'hard-days']) {
    expect(facts[code], code).toEqual({ missing: 'days-not-set' });
  }
});

test('a share is not known where a planned line has no log, or a count was not told', () => {
  const two = [{ day: 25, items: [line(), line({ code: 'seated-raise', side: 'both' })] }];
  expect(right({ plans: two, done: daily(25, 30) })['share-done-last']).toEqual({ missing: 'not-told' });
  const open = [madeDone('item-25-0', 30, { sets: null })];
  expect(right({ plans, done: open })['share-done-last']).toEqual({ missing: 'not-told' });
  const less = [madeDone('item-25-0', 30, { repetitions: 8 })];
  expect(right({ plans, done: less })['share-done-last']).toMatchObject({ value: 0.8 });
});

test('a line that is planned less often has no turn on a day where it was logged as often as planned, and has one else', () => {
  const two = [{ day: 17, items: [line({ from: inMarch(17) }), line({ code: 'step-raise', perWeek: 3 })] }];
  const every = Array.from({ length: 14 }, (_, i) => madeDone('item-17-0', 17 + i));
  const thrice = (...days: readonly number[]) => days.map((day) => madeDone('item-17-1', day));
  const share = (...days: readonly number[]) => right({ plans: two, done: [...every, ...thrice(...days)] });
  // 30 March is a day without its turn: it was done on 24, 26 and 28 of the seven days up to it
  expect(share(17, 19, 21, 24, 26, 28)['share-done-last']).toMatchObject({ value: 1 });
  expect(share(17, 19, 21, 24, 26)['share-done-last']).toEqual({ missing: 'not-told' });
  expect(share(17, 19, 21)['share-done-last']).toEqual({ missing: 'not-told' });
});

test('pain that was not told of a part of a session is not known, unless another part was over the limit', () => {
  const pains = (...told: readonly (number | null)[]) =>
    right({ plans, done: told.map((painDuring) => madeDone('item-25-0', 30, { painDuring })) });
  expect(pains(2, null)['pain-during-last']).toEqual({ missing: 'not-told' });
  expect(pains(7, null)['pain-during-last']).toMatchObject({ value: 7 });
  expect(pains(2, 4)['pain-during-last']).toMatchObject({ value: 4 });
  expect(
    right({
      plans,
      done: [madeDone('item-25-0', 29, { painDuring: 3 }), madeDone('item-25-0', 30, { painDuring: null })],
    })['worst-pain-lately'],
  ).toMatchObject({ value: 3, low: 3, high: 10 });
});

test('what was done with the other leg is none of this one', () => {
  const facts = right({ plans, done: daily(25, 30).map((one) => ({ ...one, side: 'left' as const })) });
  expect(facts['pain-during-last']).toEqual({ missing: 'no-session' });
  expect(facts['missed-in-row']).toMatchObject({ value: 6 });
});

test('minutes of stiffness that were told as a span are not known to the minute', () => {
  const mornings = madeMorningChecks(10, 31).map((one) => ({
    ...one,
    stiffnessMin: null,
    stiffness: 'under-10' as const,
  }));
  expect(right({ plans, done: daily(25, 30), mornings })['stiffness-rise-last']).toEqual({ missing: 'not-told' });
});

test('a session of three a week is planned once in each span, on the day it was done, else on the last one', () => {
  const plan = {
    place: { day: inMarch(16) },
    lines: [{ id: 'a', author: 'test', at: '', body: line({ perWeek: 3.5 }) }],
  };
  const done = [
    { day: inMarch(16), shareDone: 1, painDuring: 1, painAfter: 0, exertion: 5, heavy: false, impact: false },
  ];
  expect(plannedDays(plan, done, inMarch(22))).toEqual([inMarch(16), inMarch(19), inMarch(21)]);
  // a span that is not over is not due
  expect(plannedDays(plan, done, inMarch(19))).toEqual([inMarch(16)]);
});

test('bounces and heavy raises have days of their own, and what is done every day has none beside it', () => {
  const planned = (...perWeek: readonly [bounces: number, raises: number]): readonly string[] => {
    const lines = (['quick-rebounds', 'loaded-one-leg-raise'] as const).map((code, at) => ({
      id: code,
      author: 'test',
      at: '',
      body: line({ code, perWeek: perWeek[at] }),
    }));
    return plannedDays({ place: { day: inMarch(2) }, lines }, [], inMarch(16));
  };
  expect([planned(2, 1), planned(1, 2), planned(2, 3.5)].map(({ length }) => length)).toEqual([6, 6, 7]);
});

test('a morning passed where it is at most so much over its usual level, and is not known without one', () => {
  const mornings = madeMorningChecks(10, 20);
  expect(morningPassed(advisedPerson({ mornings }), 'right', inMarch(19), 1)).toBe(true);
  const worse = mornings.map((one) => (one.on === inMarch(20) ? { ...one, pain: { left: 1, right: 4 } } : one));
  expect(morningPassed(advisedPerson({ mornings: worse }), 'right', inMarch(19), 1)).toBe(false);
  expect(morningPassed(advisedPerson({ mornings }), 'right', inMarch(20), 1)).toBeNull();
});

test('pain after a session is told once for all of its exercises, and is not known where nobody told it', () => {
  const two = [{ day: 25, items: [line(), line({ code: 'seated-raise', side: 'both' })] }];
  const session = (first: object, second: object) =>
    right({ plans: two, done: [madeDone('item-25-0', 30, first), madeDone('item-25-1', 30, second)] });
  expect(session({ painAfter: 4 }, { painAfter: null })['pain-after-last']).toMatchObject({ value: 4 });
  expect(session({ painAfter: 0 }, { painAfter: 6 })['pain-after-last']).toMatchObject({ value: 6 });
  expect(session({ painAfter: null }, { painAfter: null })['pain-after-last']).toEqual({ missing: 'not-told' });
  expect(session({ painAfter: 4 }, {})['worst-pain-lately']).toMatchObject({ value: 4 });
  // what was not told may have been anything
  const open = session({ painAfter: null }, { painAfter: null })['worst-pain-lately'];
  expect(open).toMatchObject({ low: 2, high: 10 });
});

test('a session that was kept before it was asked says nothing of the pain after it', () => {
  const done = madeDone('item-25-0', 30);
  const before = Object.fromEntries(Object.entries(done).filter(([member]) => member !== 'painAfter')) as DoneItem;
  expect(right({ plans, done: [before] })['pain-after-last']).toEqual({ missing: 'not-told' });
});
