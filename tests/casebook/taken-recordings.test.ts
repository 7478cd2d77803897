import { casebookOf, takenRecordings } from '@surae/casebook';
import { MemoryStore, type StoredDocument } from '@surae/storage';
import { expect, test } from 'vitest';

const at = '2026-03-01T09:30:00+01:00';
const body = { bytesId: 'b', mappingId: 'm', sha256: 'a'.repeat(64), byteLength: 12 };

async function kept(): Promise<{ store: MemoryStore; person: StoredDocument; all: StoredDocument[] }> {
  const store = new MemoryStore();
  const all: StoredDocument[] = [];
  const add = async (kind: string, about: string | null, told: object): Promise<StoredDocument> => {
    const one = await store.add({ kind, schema: 1, about, author: 'RN', at, body: { ...told } });
    all.push(one);
    return one;
  };
  const person = await add('person', null, { name: 'A 17', bodyMassKg: null, heelLeverM: null, demo: false });
  const visit = await add('visit', person.id, { personId: person.id });
  const waiting = await add('recording-taken', null, body);
  await add('recording-taken', person.id, { ...body, bytesId: 'c' });
  const aside = await add('recording-taken', null, { ...body, bytesId: 'd' });
  await add('recording-used', waiting.id, {
    personId: person.id,
    visitId: visit.id,
    bytesId: 'b',
    mappingId: 'm',
  });
  await add('removal', aside.id, { why: 'put aside' });
  return { store, person, all };
}

test('recordings that were taken in stand in the casebook with whose they are, until they are put aside', async () => {
  const { person, all } = await kept();
  const { takenRecordings: taken, problems } = casebookOf(all);
  expect(problems).toEqual([]);
  expect(taken.map(({ bytesId, personId, usedIn }) => [bytesId, personId, usedIn])).toEqual([
    ['b', person.id, [all[1].id]],
    ['c', person.id, []],
  ]);
});

test('one of somebody who is not there is among the problems, and one that waits is not', async () => {
  const { all } = await kept();
  const without = all.filter(({ kind }) => kind !== 'person' && kind !== 'visit');
  const { problems } = casebookOf(without);
  expect(problems.map(({ kind, code }) => [kind, code])).toEqual([['recording-taken', 'about-nothing']]);
});

test('nobody has it before it is put to a visit', async () => {
  const { all } = await kept();
  const waiting = all.filter(({ kind, about }) => kind === 'recording-taken' && about === null);
  expect(takenRecordings(waiting, []).map(({ personId, usedIn }) => [personId, usedIn])).toEqual([
    [null, []],
    [null, []],
  ]);
});
