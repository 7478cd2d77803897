import type { PlanItem, SoreSides } from '@surae/casebook';
import { EXERCISES, PLAN_BOUNDS, type PlanBound } from '@surae/shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  isPressable,
  lineAfter,
  type Press,
  planNumbers,
  pressed,
  timeUnderTension,
} from '../../../apps/dashboard/src/plan/plan-numbers.ts';
import { madeExercise, madePlanItem, madeRunLimit } from '../../support/plan-items.ts';

const middle = { sore: { left: 'no', right: 'mid-portion' } as SoreSides };
const heel = { sore: { left: 'no', right: 'insertion' } as SoreSides };
const bound = { ...PLAN_BOUNDS.restS, least: 15, most: 300, by: 15, begin: 60, mayBeOpen: true } as PlanBound;
const presses = (value: number | null, changes: Partial<PlanBound> = {}): readonly (number | null)[] =>
  ([-5, -1, 1, 5, 'least', 'most'] as const).map((press) => pressed({ value, bound: { ...bound, ...changes } }, press));

describe('one number', () => {
  test('goes by its step, and at an end no further', () => {
    expect(presses(90)).toEqual([15, 75, 105, 165, 15, 300]);
    expect(presses(300)).toEqual([225, 285, 300, 300, 15, 300]);
    expect(presses(290)).toEqual([215, 275, 300, 300, 15, 300]);
  });

  test('below its least is left open by a single press where it may be, and stays where it may not', () => {
    expect(presses(15)).toEqual([15, null, 30, 90, 15, 300]);
    expect(presses(15, { mayBeOpen: false })).toEqual([15, 15, 30, 90, 15, 300]);
    // from between two steps it comes to its least first
    expect(presses(20)[1]).toBe(15);
  });

  test('from open begins where it begins, whichever way it is pressed', () => {
    expect(presses(null)).toEqual([60, 60, 60, 60, 15, 300]);
  });

  test('no press of any number of any exercise leaves its bounds', () => {
    const press = fc.constantFrom<Press>(-5, -1, 1, 5, 'least', 'most');
    const items = [...EXERCISES.map(({ code }) => madeExercise(code, { holdS: 30 })), madeRunLimit()];
    fc.assert(
      fc.property(fc.constantFrom(...items), fc.array(fc.tuple(fc.nat(), press), { maxLength: 30 }), (begin, all) => {
        let item: PlanItem = begin;
        for (const [at, one] of all) {
          const numbers = planNumbers(item, heel);
          item = lineAfter(item, numbers[at % numbers.length].name, one, heel);
        }
        for (const {
          value,
          bound: { least, most },
        } of planNumbers(item, heel)) {
          expect(value === null || (value >= least && value <= most)).toBe(true);
        }
        // side both: the right tendon is sore at the heel bone
        expect(item.lowestFootDeg ?? 0).toBeGreaterThanOrEqual(0);
      }),
      { seed: 31, numRuns: 200 },
    );
  });
});

describe('the range', () => {
  const after = (item: PlanItem, facts: { sore: SoreSides }): number | null =>
    lineAfter(item, 'lowestFootDeg', -1, facts).lowestFootDeg;

  test('goes below level at the edge of a step, and nowhere on the floor', () => {
    expect(after(madeExercise('step-raise'), middle)).toBe(-5);
    expect(after(madeExercise('one-leg-raise'), middle)).toBe(0);
    expect(after(madeExercise('step-raise', { lowestFootDeg: -30 }), middle)).toBe(-30);
  });

  test('stays at level for a heel bone that is sore, until a reason was given', () => {
    const step = madeExercise('step-raise', { side: 'right' });
    expect(after(step, heel)).toBe(0);
    expect(lineAfter(step, 'lowestFootDeg', 'least', heel).lowestFootDeg).toBe(0);
    expect(after({ ...step, side: 'left' }, heel)).toBe(-5);
    const reasoned = { ...step, goneOver: [{ rule: 'insertion-range', reason: 'calm for three months' }] };
    expect(after(reasoned, heel)).toBe(-5);
    expect(after({ ...step, goneOver: [{ rule: 'insertion-step', reason: 'stairs' }] }, heel)).toBe(0);
  });
});

test('weeks are days up to the last one of them, and no end is none', () => {
  const item = madeExercise('one-leg-raise', { from: '2026-03-02' });
  const four = lineAfter(item, 'weeks', 1, middle);
  expect(four.until).toBe('2026-03-29');
  expect(planNumbers(four, middle).find(({ name }) => name === 'weeks')?.value).toBe(4);
  expect(lineAfter(four, 'weeks', 'least', middle).until).toBe('2026-03-08');
  expect(lineAfter(lineAfter(four, 'weeks', 'least', middle), 'weeks', -1, middle).until).toBeNull();
});

test('a limit for runs has the numbers of its kind, and comes down to no run', () => {
  const names = (item: PlanItem): readonly string[] => planNumbers(item, middle).map(({ name }) => name);
  expect(names(madeRunLimit())[0]).toBe('runMin');
  expect(names(madeRunLimit({ mostS: null, mostM: 1000 }))[0]).toBe('runM');
  expect(lineAfter(madeRunLimit(), 'runMin', 'least', middle).run?.mostS).toBe(0);
  expect(lineAfter(madeRunLimit(), 'runMin', 1, middle).run?.mostS).toBe(360);
  expect(lineAfter(madeRunLimit({ runS: null }), 'runPartMin', 1, middle).run?.runS).toBe(60);
  expect(names(madePlanItem())).toEqual([]);
});

test('a line that a rule proposed is changed from the first press on that changes it', () => {
  const proposed = madeExercise('one-leg-raise', { proposedBy: 'level-2' });
  expect(lineAfter(proposed, 'sets', 1, middle)).toMatchObject({ sets: 4, decision: 'changed', proposedBy: 'level-2' });
  expect(lineAfter({ ...proposed, sets: 20 }, 'sets', 1, middle).decision).toBe('accepted');
  expect(isPressable({ value: 20, bound: PLAN_BOUNDS.sets }, 1)).toBe(false);
});

test('time under tension is the sum that one can do in the head, and none where a part of it is open', () => {
  // 15 repetitions of 3 s up and 3 s down
  expect(timeUnderTension(madeExercise('one-leg-raise'))).toEqual({
    count: 15,
    eachS: 6,
    setS: 90,
    sets: 3,
    allS: 270,
  });
  const hold = madeExercise('one-leg-hold', { repetitions: null, tempo: null, holdS: 45, sets: 5 });
  expect(timeUnderTension(hold)).toEqual({ count: 1, eachS: 45, setS: 45, sets: 5, allS: 225 });
  // five sets of four holds of three seconds, each hold counted
  const hard = madeExercise('one-leg-hold', { repetitions: 4, tempo: null, holdS: 3, sets: 5 });
  expect(timeUnderTension(hard)).toEqual({ count: 4, eachS: 3, setS: 12, sets: 5, allS: 60 });
  const open = madeExercise('one-leg-raise', { tempo: { upS: 3, topS: null, downS: 3 } });
  for (const item of [open, { ...open, tempo: null }, { ...hold, sets: null }, madePlanItem()]) {
    expect(timeUnderTension(item)).toBeNull();
  }
});

test('a hold is one a set until more are asked for, and one again when they are taken back', () => {
  const hold = madeExercise('one-leg-hold', { repetitions: null, tempo: null, holdS: 30, sets: 5 });
  const shown = (item: PlanItem): number | null | undefined =>
    planNumbers(item, middle).find(({ name }) => name === 'repetitions')?.value;
  expect(shown(hold)).toBe(1);
  const two = lineAfter(hold, 'repetitions', 1, middle);
  expect([two.repetitions, shown(two)]).toEqual([2, 2]);
  expect(lineAfter(two, 'repetitions', -1, middle).repetitions).toBeNull();
  expect(planNumbers(madeExercise('calf-stretch', { holdS: 30 }), middle).map(({ name }) => name)).not.toContain(
    'repetitions',
  );
});

test('a hold goes from three seconds to three quarters of a minute by whole presses', () => {
  const hold = madeExercise('one-leg-hold', { repetitions: null, tempo: null, holdS: 30, sets: 5 });
  const held = (times: number): number | null =>
    Array.from({ length: times }).reduce<PlanItem>((item) => lineAfter(item, 'holdS', 1, middle), hold).holdS;
  expect(held(5)).toBe(45);
  expect(lineAfter(hold, 'holdS', 'least', middle).holdS).toBe(3);
});
