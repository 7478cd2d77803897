import type { MorningCheck, Run } from '@surae/casebook';
import { describe, expect, test } from 'vitest';
import { flarePast } from '../../../apps/dashboard/src/course/flare-past.ts';
import { advisedPerson, inMarch, madeDone } from '../../support/advised-person.ts';
import { madeExercise } from '../../support/plan-items.ts';

const today = inMarch(31);
// how often is not said: what has no log is counted elsewhere
const items = [
  madeExercise('one-leg-raise', { side: 'right', from: inMarch(1), perWeek: null }),
  madeExercise('step-raise', { side: 'right', from: inMarch(1), perWeek: null }),
];
const plans = [{ day: 1, items }];
const sets = (day: number, of: number) => madeDone('item-1-0', day, { sets: of, repetitions: 10 });
const morning = (day: number, right: number | null): MorningCheck => ({
  on: inMarch(day),
  pain: { left: null, right },
  stiffnessMin: null,
});
const runOn = (day: number, durationS: number | null) => ({
  id: `run-${day}-${durationS}`,
  author: 'test',
  at: '',
  body: { on: inMarch(day), durationS, distanceM: 3000, pain: { left: null, right: null } } satisfies Run,
});
const of = (...given: Parameters<typeof flarePast>) => {
  const found = flarePast(...given).find(({ side, kind }) => side === 'right' && kind === 'exercises');
  return found?.sessions.map(({ on, load, isFlare }) => [on, load, isFlare]);
};

describe('days with the mornings after them', () => {
  test('a load is in minutes of a raise, and a morning far over the limit is a flare', () => {
    const past = advisedPerson({ plans, done: [sets(3, 3), sets(5, 6)], mornings: [morning(4, 2), morning(6, 7)] });
    // 3 x 10 x 6 s are 3 minutes
    expect(of(past, today)).toEqual([
      [inMarch(3), 3, false],
      [inMarch(5), 6, true],
    ]);
  });

  test('a morning that was not told is not known, and not steady', () => {
    const past = advisedPerson({ plans, done: [sets(3, 3), sets(5, 6)], mornings: [morning(4, null)] });
    expect(of(past, today)?.map(([, , isFlare]) => isFlare)).toEqual([null, null]);
  });

  test('a rise above what is usual is a flare, though the pain is small', () => {
    const usual = [1, 2, 3, 4].map((day) => morning(day, 0));
    const past = advisedPerson({ plans, done: [sets(5, 3)], mornings: [...usual, morning(6, 3)] });
    expect(of(past, today)).toEqual([[inMarch(5), 3, true]]);
  });

  test('the load of a day of which a part cannot be weighed is not known', () => {
    const step = madeDone('item-1-1', 3, { sets: 1, repetitions: 10 });
    expect(of(advisedPerson({ plans, done: [sets(3, 3), step] }), today)).toEqual([[inMarch(3), null, null]]);
    expect(of(advisedPerson({ plans, done: [sets(3, 3), madeDone(null, 3)] }), today)?.[0]?.[1]).toBeNull();
  });

  test('of today there is no morning yet, and it is left out', () => {
    expect(of(advisedPerson({ plans, done: [sets(31, 3)] }), today)).toBeUndefined();
  });

  test('runs are of a kind of their own, in minutes, and are never added to exercises', () => {
    const past = {
      ...advisedPerson({ plans, done: [sets(3, 3)], mornings: [morning(4, 7)] }),
      runs: [runOn(3, 600), runOn(3, 300), runOn(8, null)],
    };
    const found = flarePast(past, today);
    expect(found.map(({ side, kind }) => `${side} ${kind}`)).toEqual([
      'left running',
      'right exercises',
      'right running',
    ]);
    expect(found[2].sessions).toEqual([
      { on: inMarch(3), load: 15, isFlare: true },
      { on: inMarch(8), load: null, isFlare: null },
    ]);
    expect(found.every((one) => one.found.held === 'cannot-tell')).toBe(true);
  });
});
