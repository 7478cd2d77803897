import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { allDocuments, checkedRecord } from '../../../apps/dashboard/src/clinic/record-check.ts';
import { tellVisits } from '../../support/told-visit.ts';

const person = { name: 'A 17', bodyMassKg: 71.5, heelLeverM: 0.18 };

test('a record that was written here can be read whole', async () => {
  const store = new MemoryStore();
  await tellVisits(store, person, [{ day: '2026-03-01', left: { count: 20 }, right: { count: 18 } }]);
  const documents = await allDocuments(store);
  expect(await checkedRecord(store)).toEqual({ entries: documents.length, lines: [] });
});

test('many pages of changes are all of them', async () => {
  const store = new MemoryStore();
  for (let i = 0; i < 450; i += 1) {
    await store.add({ kind: 'audit-entry', schema: 1, about: null, author: 'a', at: '', body: { n: i } });
  }
  const bodies = (await allDocuments(store)).map(({ body }) => (body as { n: number }).n);
  expect(bodies).toEqual(Array.from({ length: 450 }, (_one, i) => i));
});

test('what cannot be read is a line, with what was expected where', async () => {
  const store = new MemoryStore();
  const rest = { schema: 1, about: null, author: 'a', at: '2026-03-01T09:00:00Z' };
  const { id } = await store.add({ ...rest, kind: 'run', body: { on: 'one day' } });
  await store.add({ ...rest, kind: 'of-tomorrow', body: {} });
  store.problems = () => Promise.resolve([{ id: 'abcdef0123456789', code: 'piece-missing' }]);
  const { lines } = await checkedRecord(store);
  expect(lines).toHaveLength(3);
  expect(lines[0]).toBe('recording abcdef01: a piece of it is missing');
  expect(lines[1]).toMatch(new RegExp(`^run ${id.slice(0, 8)}: not in the form of its kind \\(on: `));
  expect(lines[2]).toMatch(/^of-tomorrow .*: of a kind that this version does not know/);
});
