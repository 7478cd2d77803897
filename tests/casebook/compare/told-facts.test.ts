import { legFacts, personFacts } from '@surae/casebook';
import { expect, test } from 'vitest';
import { madeVisit } from '../../support/made-visit.ts';
import { ALL_TOLD, legTold, MODERATE } from '../../support/told-visit.ts';

const person = { id: 'p', demo: false, name: 'A', bodyMassKg: null, heelLeverM: null } as const;
const told = {
  ...madeVisit(),
  sore: { left: 'no', right: 'insertion' } as const,
  history: { about: ['pregnant'] as const, legs: { ...ALL_TOLD.legs, right: legTold('over-a-year', MODERATE) } },
};

test('what was told of a leg, whichever test it did', () => {
  const end = { painPeak: 3, exertion: 8, painSharp: true };
  expect(legFacts(told, 'right', end, 2)).toMatchObject({
    sore: true,
    earlierInjury: { monthsAgo: 13, confirmed: null },
    exertion: 8,
    painBefore: 1,
    painPeak: 3,
    painSharp: true,
    testsBefore: 2,
    inFlare: false,
  });
  expect(legFacts(told, 'left', { ...end, painPeak: 0, painSharp: null }, 0)).toMatchObject({
    sore: false,
    painSharp: false,
  });
});

test('what was not told is not known', () => {
  expect(legFacts(madeVisit(), 'left', null, 0)).toMatchObject({
    sore: null,
    earlierInjury: null,
    exertion: null,
    painBefore: null,
    painPeak: null,
    painSharp: null,
    inFlare: null,
  });
  expect(personFacts(madeVisit(), person, null)).toEqual({
    sex: null,
    ageYears: null,
    bodyMassIndex: null,
    pregnant: null,
    amputation: null,
    nerveCondition: null,
    oneSidedSport: null,
    legLengthRaise: null,
    nerveSigns: null,
  });
});

test('a list that was looked through says no of what was not chosen', () => {
  const facts = personFacts(told, { ...person, sex: 'women', birthYear: 1988 }, false);
  expect(facts).toMatchObject({ sex: 'women', ageYears: 38, pregnant: true, amputation: false, nerveSigns: false });
});
