import { countingDocuments } from '@surae/casebook';
import { type Recipe, sha256Hex } from '@surae/records';
import { MemoryStore, memoryVault, type RecordStore } from '@surae/storage';
import { describe, expect, test } from 'vitest';
import { offeredTo, type TakenMapping } from '../../../apps/dashboard/src/journey/taken-shelf.ts';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';
import { cheapCost, passphrase } from '../../support/cheap-vault.ts';

const clock = { isoNow: () => '2026-03-01T09:30:00+01:00' };
const bookOf = (store: RecordStore): VisitBook =>
  new VisitBook(store, clock, 'test', (documents) => Promise.resolve(countingDocuments(documents)));
const recipe = { kind: 'surae-recipe', name: 'plates' } as unknown as Recipe;
const mapping: TakenMapping = { name: 'Oda Brenn.csv', recipe, choice: { side: 'left' } };
// longer than a piece, with bytes that are no text
const bytes = Uint8Array.from({ length: 600_000 }, (_, i) => (i * 131) % 256);
const file = new Blob([bytes]);
const sha256 = sha256Hex(bytes);
const somebody = { name: 'Oda Brenn', bodyMassKg: null, heelLeverM: null, demo: false };

describe('a recording that was taken in', () => {
  test('is there for another book on the same store, byte by byte, with how it is read', async () => {
    const store = new MemoryStore();
    const taken = await bookOf(store).taken.keep(file, mapping, sha256, null);
    const [entry, ...others] = await bookOf(store).taken.entries();
    expect([entry, others]).toEqual([taken, []]);
    expect(entry).toMatchObject({ personId: null, byteLength: 600_000, sha256, mapping, usedIn: [] });
    const back = (await bookOf(store).taken.file(entry))!;
    expect(back.name).toBe('Oda Brenn.csv');
    expect(sha256Hex(new Uint8Array(await back.arrayBuffer()))).toBe(sha256);
  });

  test('is kept once however often it is read, and again where it is read otherwise', async () => {
    const { taken } = bookOf(new MemoryStore());
    const first = await taken.keep(file, mapping, sha256, null);
    expect(await taken.keep(file, mapping, sha256, null)).toEqual(first);
    await taken.keep(file, { ...mapping, choice: { side: 'right' } }, sha256, null);
    expect(await taken.entries()).toHaveLength(2);
  });

  test('is not kept where the file is another one by now', async () => {
    const { taken } = bookOf(new MemoryStore());
    await expect(taken.keep(file, mapping, sha256Hex(new Uint8Array([1])), null)).rejects.toThrow(/changed while/);
    expect(await taken.entries()).toEqual([]);
  });

  test('is offered no more once it is put aside, and stays in the record', async () => {
    const store = new MemoryStore();
    const { taken } = bookOf(store);
    const entry = await taken.keep(file, mapping, sha256, null);
    await taken.putAside(entry, 'read twice');
    expect(await taken.entries()).toEqual([]);
    expect((await store.bytes(entry.bytesId))?.sha256).toBe(sha256);
    expect(await store.documents({ kind: 'removal', about: entry.id })).toHaveLength(1);
  });

  test('is offered to visits of its person, or of anybody while it waits, until it is put to one', async () => {
    const store = new MemoryStore();
    const book = bookOf(store);
    const [one, other] = [await book.addPerson(somebody), await book.addPerson(somebody)];
    const visits = await Promise.all([one, one, other].map(({ id }) => book.beginVisit(id)));
    const [mine, later, theirs] = visits.map((id, i) => ({ id, personId: [one, one, other][i].id }));
    const offered = async (): Promise<number[]> => {
      const entries = await book.taken.entries();
      return [mine, later, theirs].map((visit) => offeredTo(entries, visit).length);
    };
    const waiting = await book.taken.keep(file, mapping, sha256, null);
    expect(await offered()).toEqual([1, 1, 1]);
    await book.taken.use(waiting, mine.id, one.id);
    await book.taken.use(waiting, mine.id, one.id);
    expect(await store.documents({ kind: 'recording-used' })).toHaveLength(1);
    // both legs may lie in one file
    expect(await offered()).toEqual([1, 0, 0]);
    await book.taken.keep(file, { ...mapping, name: 'of one.csv' }, sha256, one.id);
    expect(await offered()).toEqual([2, 1, 0]);
  });

  test('goes with the person to whom it was put, and nothing of its file is left', async () => {
    const vault = memoryVault({ cost: cheapCost });
    await vault.create(passphrase);
    const store = await vault.open(passphrase);
    const book = bookOf(store);
    const { id: personId } = await book.addPerson(somebody);
    const visitId = await book.beginVisit(personId);
    const waiting = await book.taken.keep(file, mapping, sha256, null);
    const own = await book.taken.keep(file, { ...mapping, name: 'own.csv' }, sha256, personId);
    await book.taken.use(waiting, visitId, personId);
    await store.erase(personId, { author: 'test', at: clock.isoNow() });
    expect(await book.taken.entries()).toEqual([]);
    for (const { bytesId, mappingId } of [waiting, own]) {
      expect([await store.bytes(bytesId), await store.bytes(mappingId)]).toEqual([undefined, undefined]);
    }
    const left = await store.documents({ kind: ['recording-taken', 'recording-used'] });
    expect(JSON.stringify(left)).not.toContain('Oda');
  });

  test('of which a byte was changed is not given', async () => {
    const store = new MemoryStore();
    const { taken } = bookOf(store);
    const entry = await taken.keep(file, mapping, sha256, null);
    expect(await taken.file({ ...entry, sha256: sha256Hex(new Uint8Array([1])) })).toBeUndefined();
  });
});
