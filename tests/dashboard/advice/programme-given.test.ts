import type { PlanItem } from '@surae/casebook';
import { GUIDANCE_RULES } from '@surae/shared';
import { expect, test } from 'vitest';
import { programmeGiven } from '../../../apps/dashboard/src/advice/programme-given.ts';
import { proposedByText } from '../../../apps/dashboard/src/advice/proposed-by.ts';
import { advisedPerson, inMarch, type KeptPlan } from '../../support/advised-person.ts';
import { madeExercise } from '../../support/plan-items.ts';

const single = GUIDANCE_RULES.find(({ code }) => code === 'start-single')!;
const learn = GUIDANCE_RULES.find(({ code }) => code === 'start-learn')!;

function line(day: number, changes: Partial<PlanItem> = {}): PlanItem {
  const proposedBy = proposedByText(single, 'right', 'single');
  return madeExercise('one-leg-raise', { side: 'right', from: inMarch(day), repetitions: 12, proposedBy, ...changes });
}

function given(...plans: readonly KeptPlan[]) {
  return programmeGiven(advisedPerson({ plans }), 'right', inMarch(31));
}

test('without a plan nothing is begun that is known here, and nothing says that none is', () => {
  const facts = given();
  for (const code of ['programme-begun', 'level-now', 'days-at-level', 'days-in-programme', 'repetitions-left']) {
    expect(facts[code], code).toEqual({ missing: 'no-plan' });
  }
  expect(facts['load-left']).toEqual({ missing: 'not-asked' });
});

test('a plan of the other leg begins nothing on this one', () => {
  expect(given({ day: 10, items: [line(10, { side: 'left' })] })['programme-begun']).toMatchObject({ value: 'no' });
});

test('level, days and what is left of it are read from the lines that a rule proposed', () => {
  const facts = given(
    { day: 3, items: [line(3, { proposedBy: proposedByText(learn, 'right', 'learn') })] },
    { day: 10, items: [line(10)] },
    { day: 24, items: [line(24)] },
  );
  expect(facts['programme-begun']).toMatchObject({ value: 'yes', from: { what: 'plan', day: inMarch(24) } });
  expect(facts['level-now']).toMatchObject({ value: 2 });
  expect(facts['days-at-level']).toMatchObject({ value: 21, from: { day: inMarch(10), visitId: 'visit-10' } });
  expect(facts['days-in-programme']).toMatchObject({ value: 28 });
  expect(facts['repetitions-left']).toMatchObject({ value: 3 });
});

test('where the weeks of a schedule say how often, no repetition is left to be added', () => {
  const items = [line(10, { code: 'loaded-one-leg-raise', proposedBy: proposedByText(single, 'right', 'heavy') })];
  expect(given({ day: 10, items })['repetitions-left']).toMatchObject({ value: 0 });
});

test('of a line that a clinician wrote the level is not known', () => {
  const facts = given({ day: 10, items: [line(10, { proposedBy: null })] });
  expect(facts['programme-begun']).toMatchObject({ value: 'yes' });
  for (const code of ['level-now', 'days-at-level', 'repetitions-left']) {
    expect(facts[code], code).toEqual({ missing: 'no-level' });
  }
});

test('a plan that was ended is none, and days count from the one after it', () => {
  const ended = { day: 12, items: [], changes: { plan: [], planEnded: true } };
  expect(given({ day: 10, items: [line(10)] }, ended)['programme-begun']).toEqual({ missing: 'no-plan' });
  const again = given({ day: 3, items: [line(3)] }, ended, { day: 20, items: [line(20)] });
  expect(again['days-in-programme']).toMatchObject({ value: 11 });
});
