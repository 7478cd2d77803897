import { expect, test } from 'vitest';
import { doseSince, easedFrom } from '../../../apps/dashboard/src/advice/dose-held.ts';
import { advisedPerson, inMarch, type KeptPlan } from '../../support/advised-person.ts';
import { madeExercise } from '../../support/plan-items.ts';

const today = inMarch(31);

function plan(day: number, repetitions: number, rule: string | null = null, changes = {}): KeptPlan {
  const proposedBy = rule === null ? null : `guidance.${rule}/1/common-practice/right/single`;
  const line = { side: 'right', repetitions, perWeek: 7, from: inMarch(day), proposedBy, ...changes } as const;
  return { day, items: [madeExercise('one-leg-raise', line)] };
}

function past(...plans: readonly KeptPlan[]) {
  return advisedPerson({ plans });
}

test('the dose of now holds since the first of the plans in a row that say the same', () => {
  expect(doseSince(past(plan(2, 12), plan(9, 10), plan(16, 10), plan(23, 10)), 'right', today)).toBe(inMarch(9));
  expect(doseSince(past(plan(2, 10), plan(9, 12), plan(16, 10)), 'right', today)).toBe(inMarch(16));
});

test.each([
  ['more weight', { load: { value: 5, unit: 'kg' } }],
  ['another tempo', { tempo: { upS: 2, topS: 0, downS: 2 } }],
  ['a lower heel', { lowestFootDeg: -10 }],
  ['more sets', { sets: 4 }],
  ['oftener', { perWeek: 3 }],
])('%s is another dose', (_, changes) => {
  expect(doseSince(past(plan(9, 10), plan(16, 10, null, changes)), 'right', today)).toBe(inMarch(16));
});

test('who wrote it, when it begins and its words are no dose; a leg without a line has none', () => {
  const carried = plan(16, 10, 'step-hold', { what: 'raises, slowly', decision: 'accepted' });
  expect(doseSince(past(plan(9, 10), carried), 'right', today)).toBe(inMarch(9));
  expect(doseSince(past(plan(9, 10)), 'left', today)).toBeNull();
  expect(doseSince(past(), 'right', today)).toBeNull();
});

test('a dose that was made less is eased until it is back, whatever held it in between', () => {
  const before = plan(2, 12, 'start-single');
  const less = plan(9, 9, 'step-reduce');
  expect(easedFrom(past(before), 'right')).toEqual({ isEased: false, before: null });
  for (const plans of [
    [before, less],
    [before, less, plan(16, 9, 'step-hold'), plan(23, 9, 'step-wait')],
  ]) {
    const eased = easedFrom(past(...plans), 'right');
    expect([eased?.isEased, eased?.before?.lines[0]?.body.repetitions]).toEqual([true, 12]);
  }
  expect(easedFrom(past(before, less, plan(16, 12, 'change-back')), 'right')?.isEased).toBe(false);
  // eased twice in a row: what was before the first of them comes back
  expect(easedFrom(past(before, less, plan(16, 7, 'step-reduce')), 'right')?.before?.lines[0]?.body.repetitions).toBe(
    12,
  );
});

test('a plan that was written by hand does not say whether it was made less', () => {
  expect(easedFrom(past(plan(2, 12, 'start-single'), plan(9, 9)), 'right')).toBeNull();
  expect(easedFrom(past(), 'right')).toBeNull();
});
