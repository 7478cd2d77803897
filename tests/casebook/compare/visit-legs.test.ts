import type { Visit } from '@surae/casebook';
import { legPast, testedLeg, visitLegs } from '@surae/casebook';
import { FLOOR } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';
import { ALL_TOLD, legTold, MODERATE, type ToldVisit, tellVisits } from '../../support/told-visit.ts';

const person = { name: 'A', bodyMassKg: null, heelLeverM: null, sex: 'women', birthYear: 1988 } as const;

async function visitsOf(...told: readonly ToldVisit[]): Promise<Visit[]> {
  const store = new MemoryStore();
  const ids = await tellVisits(store, person, told);
  const book = new VisitBook(store, { isoNow: () => '' }, 'test');
  return Promise.all(ids.map(async (id) => (await book.visit(id))!));
}

const both = (day: string, right: number, changes: Partial<ToldVisit> = {}): ToldVisit => ({
  day,
  left: { count: 27 },
  right: { count: right },
  ...changes,
});

test('what was told of a visit reaches the comparison, and what was not is not known', async () => {
  const history = { ...ALL_TOLD, legs: { ...ALL_TOLD.legs, right: legTold('over-a-year', MODERATE) } };
  const [told, open] = await visitsOf(
    both('2026-03-02', 19, { history }),
    both('2026-03-30', 19, { history: null, ticked: null }),
  );
  const legs = visitLegs(told, { ...person, id: 'p', demo: false }, []);
  expect(legs).toMatchObject({ first: 'left', restS: 180, sameDay: true, sameSource: true });
  expect(legs.person).toMatchObject({ sex: 'women', ageYears: 38, pregnant: false, nerveSigns: false });
  expect(legs.legs.right?.facts).toMatchObject({
    sore: true,
    earlierInjury: { monthsAgo: 13, confirmed: null },
    painBefore: 1,
    painSharp: false,
    testsBefore: 0,
    inFlare: false,
  });
  const unknown = visitLegs(open, { ...person, id: 'p', demo: false, birthYear: null }, [told]);
  expect(unknown.person).toMatchObject({ ageYears: null, pregnant: null, oneSidedSport: null, nerveSigns: null });
  expect(unknown.legs.right?.facts).toMatchObject({
    earlierInjury: null,
    painBefore: null,
    inFlare: null,
    testsBefore: 1,
  });
});

test('a leg without a result, and a protocol that is not known here, are no leg', async () => {
  const [visit] = await visitsOf({ day: '2026-03-02', left: { count: 27 } });
  expect(testedLeg(visit, 'right', [])).toBeNull();
  const strange = visit.sets.map((set) => ({
    ...set,
    report: { ...set.report!, protocol: { ...set.report!.protocol, id: 'single-leg.moon' } },
  }));
  expect(testedLeg({ ...visit, sets: strange }, 'left', [])).toBeNull();
});

test('visits done alike make a course; another surface, or a set ended for pain, stands apart', async () => {
  const visits = await visitsOf(
    both('2026-03-02', 19),
    both('2026-03-30', 9, { right: { count: 9, reason: 'pain', pain: 6 } }),
    both('2026-04-20', 22, { right: { count: 22, protocol: FLOOR } }),
    both('2026-04-27', 24),
  );
  const past = legPast(visits[3], 'right', visits.slice(0, 3));
  expect(past?.alike.map(({ leg }) => leg.report.count.scored)).toEqual([19]);
  expect(past?.unlike.map(({ leg }) => leg.report.count.scored)).toEqual([9, 22]);
  expect(past?.course?.visits.map(({ value }) => value)).toEqual([19, 24]);
  expect(past?.course?.visits.map(({ testsBefore }) => testsBefore)).toEqual([0, 2]);
});

test('a set that is not interpreted has no course, whatever came before', async () => {
  const visits = await visitsOf(both('2026-03-02', 19), both('2026-03-30', 9, { right: { count: 9, reason: 'pain' } }));
  expect(legPast(visits[1], 'right', visits.slice(0, 1))?.course).toBeNull();
});
