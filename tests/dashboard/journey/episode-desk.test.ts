import { caseloadOf, countingDocuments, type Episode } from '@surae/casebook';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { EpisodeDesk } from '../../../apps/dashboard/src/journey/episode-desk.ts';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';

const told: Episode = {
  ...{ sore: { left: 'no', right: 'insertion' }, onset: 'sudden', began: '2026-08', over: null, pop: false },
  ...{ story: null, goal: 'a race', loads: null, goalBy: '2027-05' },
};

test('an episode is written, corrected, ended and taken back, and nothing that was written is gone', async () => {
  const store = new MemoryStore();
  let second = 0;
  const clock = { isoNow: () => `2026-09-01T09:00:${String(second++).padStart(2, '0')}.000Z` };
  const read = (documents: Parameters<typeof countingDocuments>[0]) => Promise.resolve(countingDocuments(documents));
  const book = new VisitBook(store, clock, 'test', read);
  const desk = new EpisodeDesk(store, book.hand);
  const [{ id: personId }, { id: other }] = [
    await book.addPerson({ name: 'A 17', bodyMassKg: 70, heelLeverM: null, demo: false }),
    await book.addPerson({ name: 'B 3', bodyMassKg: 70, heelLeverM: null, demo: false }),
  ];
  const listed = async () => (await book.caseload())[0].facts.episodes.map(({ sore, began }) => [sore.right, began]);
  await desk.add(other, told);
  await desk.add(personId, told);
  const course = async () => (await desk.ofPerson(personId))[0];
  const { id } = await course();
  await desk.amend(id, { began: '2026-07' });
  expect(await listed()).toEqual([['insertion', '2026-07']]);
  await desk.amend(id, { over: '2026-08-30' });
  expect(await listed()).toEqual([]);
  await desk.undo(await course());
  expect(await listed()).toEqual([['insertion', '2026-07']]);
  await desk.undo(await course());
  expect(await listed()).toEqual([['insertion', '2026-08']]);
  await desk.undo(await course());
  expect(await listed()).toEqual([]);
  expect(await desk.ofPerson(personId)).toEqual([]);
  expect(await desk.ofPerson(other)).toHaveLength(1);
  const kinds = (await store.documents({ whose: personId })).map(({ kind }) => kind);
  expect(kinds).toEqual(['person', 'episode', 'amendment', 'amendment', 'amendment', 'amendment', 'removal']);
  expect(caseloadOf(await store.documents({ kind: 'person' }))).toHaveLength(2);
});
