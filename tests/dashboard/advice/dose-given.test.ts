import { expect, test } from 'vitest';
import { sessionsOf } from '../../../apps/dashboard/src/advice/course-given.ts';
import { doseGiven } from '../../../apps/dashboard/src/advice/dose-given.ts';
import { advisedPerson, inMarch, madeDone, type Past } from '../../support/advised-person.ts';
import { madeExercise } from '../../support/plan-items.ts';

const today = inMarch(31);
const proposedBy = 'guidance.start-range/1/common-practice/right/range';
const line = madeExercise('step-raise', {
  side: 'right',
  repetitions: 10,
  perWeek: 7,
  lowestFootDeg: -10,
  from: inMarch(11),
  proposedBy,
});

function given(past: Past) {
  const person = advisedPerson(past);
  return doseGiven(person, 'right', sessionsOf(person, 'right', 5), today);
}

const plans = [{ day: 11, items: [line] }];

test('without a plan nothing of a dose is said', () => {
  expect(given({})).toEqual({});
});

test('range that is left is what lies between the lowest heel of the plan and that of the surface', () => {
  expect(given({ plans })['range-left']).toMatchObject({ value: 20 });
  const held = madeExercise('two-leg-raise', { side: 'both', lowestFootDeg: null });
  expect(given({ plans: [{ day: 11, items: [held] }] })['range-left']).toEqual({ missing: 'no-level' });
});

test('the share of six weeks counts what has no log as open: neither done nor left out', () => {
  // twenty days were planned, of which ten have a log
  const done = Array.from({ length: 10 }, (_, i) => madeDone('item-11-0', 11 + i));
  expect(given({ plans, done })['share-six-weeks']).toMatchObject({ value: 0.5, low: 0.5, high: 1 });
  const all = Array.from({ length: 20 }, (_, i) => madeDone('item-11-0', 11 + i));
  expect(given({ plans, done: all })['share-six-weeks']).toMatchObject({ value: 1, low: 1, high: 1 });
  // half of each session
  const half = all.map((one) => ({ ...one, repetitions: 5 }));
  expect(given({ plans, done: half })['share-six-weeks']).toMatchObject({ low: 0.5, high: 0.5 });
});

test('a plan that was carried over goes on being counted from its first day', () => {
  const carried = [...plans, { day: 21, items: [{ ...line, from: inMarch(21) }] }];
  const done = Array.from({ length: 10 }, (_, i) => madeDone('item-11-0', 11 + i));
  expect(given({ plans: carried, done })['share-six-weeks']).toMatchObject({ low: 0.5, high: 1 });
});
