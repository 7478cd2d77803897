import { propose } from '@surae/guidance';
import { GUIDANCE_FACTS, GUIDANCE_RULES } from '@surae/shared';
import { expect, test } from 'vitest';
import { withActivity } from '../../../apps/dashboard/src/advice/activity-given.ts';
import { factsGiven } from '../../../apps/dashboard/src/advice/facts-given.ts';
import { advisedPerson, advisedVisit, inMarch, madeRun, type Past } from '../../support/advised-person.ts';
import { known } from '../../support/guidance-facts.ts';
import { madeRunLimit } from '../../support/plan-items.ts';

const today = inMarch(31);
const given = (past: Past = {}) => factsGiven(advisedPerson(past), advisedVisit(), today);
const pained = (day: number, right: number | null) => madeRun(day, { pain: { left: 0, right } });

test('a run says that somebody runs, and when it was', () => {
  const { person } = given({ runs: [madeRun(29)] });
  expect(person['runs']).toMatchObject({ value: 'yes' });
  expect(person['running-now']).toMatchObject({ value: 'running' });
  expect(person['days-since-run']).toMatchObject({ value: 2, from: { what: 'run', day: inMarch(29) } });
  expect(given().person['days-since-run']).toEqual({ missing: 'no-run' });
  expect(given().person['running-now']).toEqual({ missing: 'not-asked' });
});

test('a plan of no running says that it is paused', () => {
  const { person } = given({ plans: [{ day: 20, items: [madeRunLimit({ mostS: 0 })] }] });
  expect(person['running-now']).toMatchObject({ value: 'paused', from: { what: 'plan' } });
});

test('the load of a run is graded for each leg by its own pain, and not where it was not told', () => {
  const { left, right } = given({ runs: [pained(30, 4)] }).legs;
  expect(left['last-load']).toMatchObject({ value: 'light' });
  expect(right['last-load']).toMatchObject({ value: 'high' });
  expect(right['recovery-days']).toMatchObject({ value: 1 });
  expect(given({ runs: [pained(30, null)] }).legs.right['last-load']).toEqual({ missing: 'not-told' });
});

test('a light run after a heavy one does not end its rest', () => {
  const { right } = given({ runs: [pained(29, 5), pained(31, 0)] }).legs;
  expect([right['last-load'], right['recovery-days']]).toMatchObject([{ value: 'high' }, { value: 2 }]);
  const over = given({ runs: [pained(20, 5), pained(31, 0)] }).legs.right;
  expect(over['last-load']).toMatchObject({ value: 'light' });
});

test('heavy raises on the day after a run are warned of', () => {
  const codes = (day: number) =>
    propose(given({ runs: [pained(day, 0)] }), GUIDANCE_RULES, GUIDANCE_FACTS).proposals.map(({ rule }) => rule.code);
  expect(codes(30)).toContain('recovery-after-run');
  expect(codes(29)).not.toContain('recovery-after-run');
});

test('the age is the least that a year of birth can mean', () => {
  // born in 1988: 37 before the birthday of 2026
  expect(given().person['age-at-least']).toMatchObject({ value: 37 });
});

test('the lists of a return are missing where a point cannot be told, and never no for that', () => {
  const { right } = given().legs;
  expect(right['full-return-met']).toEqual({ missing: 'cannot-tell' });
  // 14 raises of 20: one point that is not met is enough
  expect(right['return-criteria']).toMatchObject({ value: 'no', from: { what: 'criteria' } });
});

test('an answer that was given goes before what follows from logs', () => {
  const told = { ...given(), person: { ...given().person, 'running-now': known('paused') } };
  const person = advisedPerson({ runs: [madeRun(29)] });
  const { person: after } = withActivity(told, person, advisedVisit(), today);
  expect(after['running-now']).toMatchObject({ value: 'paused' });
});
