import type { Visit } from '@surae/casebook';
import { propose } from '@surae/guidance';
import { ADVICE_FROM_WORDS, ADVICE_MISSING_WORDS, GUIDANCE_FACTS, GUIDANCE_RULES } from '@surae/shared';
import { expect, test } from 'vitest';
import { beforeVisit, factsGiven } from '../../../apps/dashboard/src/advice/facts-given.ts';
import { advisedPerson, advisedVisit, inMarch } from '../../support/advised-person.ts';

const today = inMarch(31);

test('every fact that a rule may ask about is given, or missing with a reason that has words', () => {
  const { legs, person } = factsGiven(advisedPerson(), advisedVisit(), today);
  for (const { code, of } of GUIDANCE_FACTS) {
    for (const bag of of === 'leg' ? [legs.left, legs.right] : [person]) {
      const fact = bag[code];
      expect(fact, code).toBeDefined();
      if (fact === undefined) continue;
      if ('missing' in fact) expect(ADVICE_MISSING_WORDS).toHaveProperty(fact.missing);
      else expect(ADVICE_FROM_WORDS).toHaveProperty(fact.from.what);
    }
  }
});

test('a visit in which nothing was asked gives no number and no code of a leg but what the record itself says', () => {
  const nothing = advisedVisit({ sore: { left: null, right: null }, safety: null, sets: [] });
  const bare: Visit = { ...nothing };
  for (const told of ['history', 'ladder']) Reflect.deleteProperty(bare, told);
  const { legs, person } = factsGiven(advisedPerson(), bare, today);
  const known = (bag: object): string[] =>
    Object.entries(bag).flatMap(([code, fact]) => ('missing' in (fact as object) ? [] : [code]));
  // the year of birth, that there are no weeks of mornings and that no target was set is what the record says
  expect(known(person)).toEqual(['age-at-least']);
  expect(known(legs.left).sort()).toEqual(['morning-weeks', 'push-target-set', 'tested-by', 'week-trend']);
});

test('facts are answers that the rules can be asked with', () => {
  const given = factsGiven(advisedPerson(), advisedVisit(), today);
  expect(() => propose(given, GUIDANCE_RULES, GUIDANCE_FACTS)).not.toThrow();
});

test('which legs are sore is known once both were asked', () => {
  const sore = (left: 'no' | 'insertion' | null, right: 'no' | 'insertion' | null) =>
    factsGiven(advisedPerson(), advisedVisit({ sore: { left, right } }), today).person;
  expect(sore('no', 'insertion')['sore-legs']).toMatchObject({ value: 'right' });
  expect(sore('no', 'no')['sore-legs']).toMatchObject({ value: 'none' });
  expect(sore(null, 'insertion')['sore-legs']).toEqual({ missing: 'not-asked' });
  expect(sore('insertion', 'insertion')['both-heel-bones']).toMatchObject({ value: 'yes' });
  expect(sore(null, 'insertion')['both-heel-bones']).toEqual({ missing: 'not-asked' });
  expect(sore('no', null)['both-heel-bones']).toMatchObject({ value: 'no' });
});

test('that nobody pushed on a rig does not say that there is none', () => {
  expect(factsGiven(advisedPerson(), advisedVisit(), today).person['rig-at-hand']).toEqual({ missing: 'not-asked' });
});

test('the visit itself and what came after it is no past', () => {
  const later = advisedVisit({ id: 'later', begunAt: `${today}T18:00:00.000+02:00` });
  const before = advisedVisit({ id: 'before', begunAt: `${inMarch(3)}T18:00:00.000+01:00` });
  const person = advisedPerson({ visits: [before, advisedVisit(), later] });
  expect(beforeVisit(person, advisedVisit()).visits.map(({ visit }) => visit.id)).toEqual(['before']);
});
