import { casebookOf } from '@surae/casebook';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { personAtVisit, visitAndPast, visitsIn } from '../../../apps/dashboard/src/journey/person-visits.ts';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';
import { tellVisits } from '../../support/told-visit.ts';

const somebody = { name: 'A 17', bodyMassKg: 70, heelLeverM: 0.18 };
const legs = { left: { count: 20 }, right: { count: 17 } };

/** Somebody with a visit in each month, told in another order, whose weight was corrected after them. */
async function told() {
  const store = new MemoryStore();
  const days = ['2026-02-11', '2026-04-11', '2026-01-11', '2026-03-11'];
  const ids = await tellVisits(
    store,
    somebody,
    days.map((day) => ({ day, ...legs })),
  );
  const clock = { isoNow: () => '2026-05-01T09:00:00.000Z' };
  const book = new VisitBook(store, clock, 'test');
  const [{ id: personId }] = await book.people();
  await book.amendPerson(personId, { bodyMassKg: 74, name: 'A 71' }, null);
  const documents = (await store.changesSince(null)).documents.map(({ document }) => document);
  return { documents, ids, days };
}

test('visits, people and the past of a visit are what the casebook makes of the same documents', async () => {
  const { documents, ids, days } = await told();
  const { visits } = casebookOf(documents).people[0];
  expect(visitsIn(documents)).toEqual(visits.map(({ visit }) => visit));
  ids.forEach((id, at) => {
    const known = visits.find(({ visit }) => visit.id === id)!;
    const found = visitAndPast(documents, id)!;
    expect([found.visit, found.person]).toEqual([known.visit, known.person]);
    expect(found.visit.sets.map(({ report }) => report?.count.attempted)).toEqual([20, 17]);
    const before = days.filter((day) => day < days[at]).sort();
    expect(found.earlier.map(({ begunAt }) => begunAt.slice(0, 10))).toEqual(before);
  });
});

test('documents that tell of no such visit or no such person have none', async () => {
  const { documents, ids } = await told();
  const [visit] = visitsIn(documents);
  expect(visitAndPast(documents, 'nothing')).toBeUndefined();
  expect(visitAndPast([], ids[0])).toBeUndefined();
  expect(personAtVisit(documents, { ...visit, personId: 'nobody' })).toBeUndefined();
});
