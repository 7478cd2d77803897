import { casebookOf, type Recount, recountsIn } from '@surae/casebook';
import { FLOOR } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { madeBackup, sourceOf } from '../../apps/dashboard/src/clinic/backup-work.ts';
import { coursePerson } from '../support/course-person.ts';
import { toldReport } from '../support/told-visit.ts';

async function counted() {
  const given = await coursePerson({ day: '2026-03-02', left: { count: 22 }, right: { count: 18 } });
  const [visitId] = given.visitIds;
  const [set] = (await given.read()).visits[0].visit.sets;
  const again = toldReport('left', { count: 17, protocol: FLOOR });
  const recount: Recount = {
    setId: set.id,
    report: again,
    settingsHash: 'h',
    software: 'surae 0.0.9',
    why: 'level floor after all',
  };
  const id = await given.book.log.addRecount(visitId, recount);
  return { ...given, visitId, set, recount, id };
}

test('a re-count keeps both: the first result stays as it was and stays the one that counts', async () => {
  const { read, set, recount, book, visitId } = await counted();
  const [{ visit, recounts }] = (await read()).visits;
  expect(visit.sets[0].report).toEqual(set.report);
  expect(visit.sets[0].report!.count.scored).toBe(22);
  expect(recounts.map(({ body }) => body)).toEqual([JSON.parse(JSON.stringify(recount))]);
  expect((await book.log.recounts(visitId)).map(({ id, body }) => [id, body.report.count.scored])).toEqual([
    [recounts[0].id, 17],
  ]);
  expect((await book.visit(visitId))!.sets[0].report).toEqual(set.report);
});

test('one that is taken out counts no more, and stays in the store', async () => {
  const { store, read, book, id } = await counted();
  await book.log.takeOut(id, 'by hand');
  expect((await read()).visits[0].recounts).toEqual([]);
  expect(await store.documents({ kind: 'recount' })).toHaveLength(1);
});

test('both results come back from a backup', async () => {
  const { store } = await counted();
  const { blob } = await madeBackup(store, '2026-06-02T09:00:00Z');
  const other = new MemoryStore();
  await other.restore(sourceOf(blob));
  const documents = (await other.changesSince(null, Number.MAX_SAFE_INTEGER)).documents.map(({ document }) => document);
  const [{ visit, recounts }] = casebookOf(documents).people[0].visits;
  expect([visit.sets[0].report!.count.scored, recounts[0].body.report.count.scored]).toEqual([22, 17]);
  expect(recountsIn(documents)).toEqual(recounts);
});
