import { expect, test } from 'vitest';
import { painTries } from '../../../apps/dashboard/src/course/pain-tries.ts';
import { advisedPerson, advisedVisit, inMarch, madeDone } from '../../support/advised-person.ts';
import { madeExercise } from '../../support/plan-items.ts';

const items = [
  madeExercise('one-leg-raise', { side: 'right', from: inMarch(1) }),
  madeExercise('one-leg-hold', { side: 'right', from: inMarch(1), repetitions: null, tempo: null, holdS: 45 }),
  madeExercise('loaded-one-leg-raise', { side: 'right', from: inMarch(1), load: { value: 10, unit: 'kg' } }),
];
const plans = [{ day: 1, items }];
const tried = (...done: readonly ReturnType<typeof madeDone>[]) => painTries(advisedPerson({ plans, done }));

test('a session is at the exercise and tempo of its line, and at what was written down', () => {
  expect(tried(madeDone('item-1-0', 3, { sets: 2, repetitions: 12, painDuring: 4 }))).toEqual([
    {
      on: inMarch(3),
      exercise: 'one-leg-raise',
      leg: 'right',
      load: null,
      sets: 2,
      repetitions: 12,
      eachS: 6,
      pain: 4,
    },
  ]);
});

test('a hold is one a set, and a weight that was planned and not written down is not known', () => {
  expect(tried(madeDone('item-1-1', 3, { repetitions: null }))[0]).toMatchObject({ repetitions: 1, eachS: 45 });
  expect(tried(madeDone('item-1-0', 3, { repetitions: null }))[0]).toMatchObject({ repetitions: null });
  expect(tried(madeDone('item-1-2', 3))[0]).toMatchObject({ load: 'not-told' });
  expect(tried(madeDone('item-1-2', 3, { load: { value: 5, unit: 'kg' } }))[0]).toMatchObject({ load: { value: 5 } });
});

test('what is in somebody’s own words has no exercise', () => {
  expect(tried(madeDone(null, 3))[0]).toMatchObject({ exercise: null, eachS: null });
});

test('what was tried before a test is a load of its own, by rung and leg; walking is none', () => {
  const found = painTries(advisedPerson({ visits: [advisedVisit()] }));
  // the ladder of the left leg is 0, 0, 0, 1 and of the right one 1, 2, 2, 3
  expect(found.map(({ exercise, leg, repetitions, pain }) => [exercise, leg, repetitions, pain])).toEqual([
    ['try.two-leg-raise', 'left', 1, 0],
    ['try.one-raise', 'left', 1, 0],
    ['try.ten-raises', 'left', 10, 1],
    ['try.two-leg-raise', 'right', 1, 2],
    ['try.one-raise', 'right', 1, 2],
    ['try.ten-raises', 'right', 10, 3],
  ]);
});
