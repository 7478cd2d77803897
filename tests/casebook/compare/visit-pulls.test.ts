import type { TestedPull } from '@surae/analysis';
import type { LegPast, Visit } from '@surae/casebook';
import { pullPast, testedPull, visitPulls } from '@surae/casebook';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';
import { ALL_TOLD, legTold, MODERATE, type ToldVisit, tellVisits } from '../../support/told-visit.ts';

const person = { name: 'A', bodyMassKg: 82, heelLeverM: null, sex: 'women', birthYear: 1988 } as const;

async function visitsOf(...told: readonly ToldVisit[]): Promise<Visit[]> {
  const store = new MemoryStore();
  const ids = await tellVisits(store, person, told);
  const book = new VisitBook(store, { isoNow: () => '' }, 'test');
  return Promise.all(ids.map(async (id) => (await book.visit(id))!));
}

const pushes = { left: { netN: 1425 }, right: { netN: 1150 } };

test('what was told of a visit reaches the comparison of pushes as it reaches that of raises', async () => {
  const history = { ...ALL_TOLD, legs: { ...ALL_TOLD.legs, right: legTold('over-a-year', MODERATE) } };
  const [visit] = await visitsOf({ day: '2026-03-02', history, pushes });
  const pulls = visitPulls(visit, { ...person, id: 'p', demo: false }, []);
  expect(pulls).toMatchObject({ first: 'left', restS: 180, sameDay: true, sameSource: true });
  expect(pulls.person).toMatchObject({ sex: 'women', ageYears: 38, nerveSigns: false });
  expect(pulls.legs.right).toMatchObject({
    features: { origin: 'simulated', raisesBefore: 'no' },
    facts: { sore: true, earlierInjury: { monthsAgo: 13 }, painPeak: 2, painSharp: false, testsBefore: 0 },
  });
});

test('a leg without a result, a protocol that is not known here, and raises alone are no pushes', async () => {
  const [visit, raises] = await visitsOf(
    { day: '2026-03-02', pushes: { left: { netN: 1425 } } },
    { day: '2026-03-03', left: { count: 27 }, right: { count: 19 } },
  );
  expect(testedPull(visit, 'right', [])).toBeNull();
  expect(testedPull(raises, 'left', [])).toBeNull();
  const strange = visit.pulls!.map((set) => ({
    ...set,
    report: { ...set.report!, protocol: { ...set.report!.protocol, id: 'isometric.moon' } },
  }));
  expect(testedPull({ ...visit, pulls: strange }, 'left', [])).toBeNull();
});

test('a leg that did raises before it pushed was tested in another way than one that came fresh', async () => {
  const visits = await visitsOf(
    { day: '2026-03-02', pushes },
    { day: '2026-04-27', left: { count: 27 }, right: { count: 19 }, pushes },
  );
  expect(testedPull(visits[1], 'left', [])?.features).toMatchObject({ raisesBefore: 'yes' });
  const past = pullPast(visits[1], 'left', visits.slice(0, 1));
  expect([past?.alike.length, past?.unlike.length, past?.course]).toEqual([0, 1, null]);
  const garbled = { ...visits[1], sets: visits[1].sets.map((set) => ({ ...set, stoppedAt: 'at some time' })) };
  expect(testedPull(garbled, 'left', [])?.features).toMatchObject({ raisesBefore: null });
});

test('pushes done alike make a course of net forces; a cell, and what pain ended, stand apart', async () => {
  const visits = await visitsOf(
    { day: '2026-03-02', pushes },
    { day: '2026-03-16', pushes: { left: { netN: 1300, placement: 'inline' } } },
    { day: '2026-03-30', pushes: { left: { netN: 900, reason: 'pain', pain: 6 } } },
    { day: '2026-04-27', pushes: { left: { netN: 1500 } } },
  );
  const past = pullPast(visits[3], 'left', visits.slice(0, 3));
  const rounded = (legs: LegPast<TestedPull>['alike']): readonly number[] =>
    legs.map(({ result }) => Math.round((result.value ?? 0) / 10) * 10);
  expect(rounded(past!.alike)).toEqual([1430]);
  expect(rounded(past!.unlike)).toEqual([1300, 900]);
  expect(past?.now.result).toMatchObject({ unit: 'N', convention: 'net best-mean, plate under the forefoot' });
  expect(past?.course?.visits.map(({ testsBefore }) => testsBefore)).toEqual([0, 3]);
});
