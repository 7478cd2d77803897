import { countingDocuments } from '@surae/casebook';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { planItems } from '../../../apps/dashboard/src/journey/plan-lines.ts';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';

async function opened() {
  const store = new MemoryStore();
  const clock = { isoNow: () => '2026-03-01T09:00:00.000+01:00' };
  const book = new VisitBook(store, clock, 'K', (documents) => Promise.resolve(countingDocuments(documents)));
  const { id } = await book.addPerson({ name: 'Ada Vermeulen', bodyMassKg: null, heelLeverM: null, demo: true });
  return { store, book, id };
}

test('what is taken back is told by a document about each, and stays readable', async () => {
  const { store, book, id } = await opened();
  const visits = [await book.beginVisit(id), await book.beginVisit(id)];
  await book.notes.remove(visits, 'undone');
  expect(await book.visitsOf(id)).toEqual([]);
  const removals = await store.documents({ kind: 'removal' });
  expect(removals.map(({ about, body }) => [about, body])).toEqual(visits.map((one) => [one, { why: 'undone' }]));
  expect(await store.documents({ kind: 'visit' })).toHaveLength(2);
});

test('a plan is kept line by line in its order, and one planned anew takes its place', async () => {
  const { book, id } = await opened();
  const first = await book.notes.keepPlan(id, planItems(['holds', 'walk'], 'left', '2026-03-01'), []);
  const read = await book.notes.plan(id, first);
  expect(read.map(({ body }) => body.what)).toEqual(['holds', 'walk']);
  const second = await book.notes.keepPlan(id, planItems(['rest'], 'both', '2026-03-01'), first);
  expect(await book.notes.plan(id, first)).toEqual([]);
  expect((await book.notes.plan(id, second)).map(({ body }) => body.what)).toEqual(['rest']);
  expect(await book.notes.plan(id, [])).toEqual([]);
});
