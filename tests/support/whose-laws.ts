import type { AskedBy, Changes, OwnedDocument, RecordStore, StoredBytes, StoredDocument } from '@surae/storage';
import { describe, expect, test } from 'vitest';
import { hashByNode, note, pieces } from './store-laws.ts';

export const asked: AskedBy = { author: 'a tester', at: '2026-03-02T08:00:00.000+01:00' };

/** A person with a visit, two events of it and a stream; nothing of it is known to another person. */
export async function addPerson(
  store: RecordStore,
  name: string,
): Promise<{ readonly person: StoredDocument; readonly visit: StoredDocument; readonly streamId: string }> {
  const person = await store.add(note({ name }, { kind: 'person' }));
  const visit = await store.add(note({ of: name }, { kind: 'visit', about: person.id }));
  const writer = await store.openBytes('set', person.id);
  for (const piece of pieces(name, 'rises')) await writer.append(piece);
  await writer.close();
  await store.add(note({ bytesId: writer.id }, { kind: 'set-begun', about: visit.id }));
  await store.add(note({ told: name }, { kind: 'set-end', about: visit.id }));
  return { person, visit, streamId: writer.id };
}

/** Everything that changed, page by page. */
export async function allChanges(store: RecordStore, limit: number, from: string | null = null): Promise<Changes[]> {
  const pages: Changes[] = [];
  for (let mark = from; ; mark = pages.at(-1)!.mark) {
    pages.push(await store.changesSince(mark, limit));
    if (!pages.at(-1)!.more) return pages;
  }
}

/** Everything of a store in another one; gives what became of each. */
export async function copyInto(to: RecordStore, from: RecordStore): Promise<string[]> {
  const became: string[] = [];
  for (const { documents, streams } of await allChanges(from, 3)) {
    became.push(...(await to.adopt(documents)));
    for (const facts of streams) {
      const { pieces: bytes } = (await from.bytes(facts.id))!;
      became.push(await to.adoptStream({ ...facts, pieces: bytes }));
    }
  }
  return became;
}

/** What every store keeps to about whose a thing is, what changed, and what another store kept. */
export function whoseLaws(open: () => Promise<RecordStore>): void {
  describe('documents of a person', () => {
    test('are those that follow from the person, and are found at once', async () => {
      const store = await open();
      const ada = await addPerson(store, 'Ada');
      const bo = await addPerson(store, 'Bo');
      const own = await store.add(note('of the clinic', { kind: 'own-error' }));
      const told = await store.add(note('of Bo', { kind: 'note', whose: bo.person.id }));
      const nobodys = await store.add(note('of nobody', { kind: 'note', about: bo.person.id, whose: null }));
      const kinds = async (whose: string): Promise<string[]> =>
        (await store.documents({ whose })).map(({ kind }) => kind);
      expect(await kinds(ada.person.id)).toEqual(['person', 'visit', 'set-begun', 'set-end']);
      expect(await kinds(bo.person.id)).toEqual(['person', 'visit', 'set-begun', 'set-end', 'note']);
      expect(await store.documents({ whose: bo.person.id, kind: 'note' })).toEqual([told]);
      const all = await store.documents({});
      expect(all.map(({ id }) => id)).toEqual(expect.arrayContaining([own.id, nobodys.id]));
      expect(all).toHaveLength(11);
    });

    test('are found by several kinds and by several things that they are about, in the order of their places', async () => {
      const store = await open();
      const [ada, bo] = [await addPerson(store, 'Ada'), await addPerson(store, 'Bo')];
      const abouts = [bo.visit.id, ada.visit.id, bo.visit.id];
      const bodies = async (query: Parameters<RecordStore['documents']>[0]): Promise<unknown[]> =>
        (await store.documents(query)).map(({ body }) => body);
      expect(await bodies({ about: bo.visit.id })).toEqual([{ bytesId: bo.streamId }, { told: 'Bo' }]);
      expect(await bodies({ about: abouts, kind: 'set-end' })).toEqual([{ told: 'Ada' }, { told: 'Bo' }]);
      expect(await bodies({ kind: ['visit', 'person'], about: [ada.person.id] })).toEqual([{ of: 'Ada' }]);
      expect(await bodies({ kind: ['person', 'visit'] })).toEqual([
        { name: 'Ada' },
        { of: 'Ada' },
        { name: 'Bo' },
        { of: 'Bo' },
      ]);
      expect(await bodies({ kind: [] })).toEqual([]);
      expect(await bodies({ about: [] })).toEqual([]);
    });
  });

  describe('what changed', () => {
    test('is told in pages, once each, streams in the order in which they were closed', async () => {
      const store = await open();
      const [first, second] = [await store.openBytes('first', 'p1'), await store.openBytes('second')];
      for (let i = 0; i < 7; i += 1) await store.add(note(i));
      await second.append(Uint8Array.of(2));
      await second.close();
      await first.close();
      const pages = await allChanges(store, 3);
      expect(pages.flatMap(({ documents }) => documents.map(({ document }) => document.body))).toEqual([
        0, 1, 2, 3, 4, 5, 6,
      ]);
      expect(pages.flatMap(({ streams }) => streams)).toEqual([
        { id: second.id, label: 'second', whose: null, sha256: hashByNode([Uint8Array.of(2)]) },
        { id: first.id, label: 'first', whose: 'p1', sha256: hashByNode([]) },
      ]);
      const { mark } = pages.at(-1)!;
      expect(await store.changesSince(mark)).toEqual({ documents: [], streams: [], mark, more: false });
      const later = await store.add(note('later'));
      expect((await store.changesSince(mark)).documents).toEqual([{ document: later, whose: null }]);
    });

    test('is not told of a mark that no store gave', async () => {
      const store = await open();
      await expect(Promise.resolve().then(() => store.changesSince('yesterday'))).rejects.toThrow(RangeError);
    });
  });

  describe('what another store kept', () => {
    test('is taken as it was, and the second time is there already', async () => {
      const [from, to] = [await open(), await open()];
      const ada = await addPerson(from, 'Ada');
      await from.add(note('of the clinic'));
      expect(await copyInto(to, from)).toEqual(Array<string>(6).fill('added'));
      expect(await copyInto(to, from)).toEqual(Array<string>(6).fill('already-there'));
      const plain = async (store: RecordStore): Promise<unknown[]> =>
        (await store.documents({})).map((document) => ({ ...document, sequence: null }));
      expect(await plain(to)).toEqual(await plain(from));
      expect(await to.bytes(ada.streamId)).toEqual(await from.bytes(ada.streamId));
      expect(await to.documents({ whose: ada.person.id })).toHaveLength(4);
      expect(await to.problems()).toEqual([]);
    });

    test('is refused where it has the id of something else, or does not match its own hash', async () => {
      const [one, two, three] = [await open(), await open(), await open()];
      const kept = await one.add(note('one'));
      const forged: OwnedDocument = { document: { ...kept, body: 'other' }, whose: null };
      expect(await two.adopt([forged])).toEqual(['altered']);
      const other = { ...(await three.add(note('two'))) };
      // the same id with another content, each whole in itself, can only be forged: by hand over the canonical form
      const text = `{"about":null,"at":"${other.at}","author":"${other.author}","body":"two","id":"${kept.id}","kind":"note","schema":1}`;
      const conflicting = { ...other, id: kept.id, hash: hashByNode(pieces(text)) };
      expect(await one.adopt([{ document: conflicting, whose: null }])).toEqual(['conflict']);
      expect(await one.document(kept.id)).toEqual(kept);
      expect(await two.documents({})).toEqual([]);
      const whole = { document: kept, whose: null };
      expect(await three.adopt([whole, whole, { document: conflicting, whose: null }])).toEqual([
        'added',
        'already-there',
        'conflict',
      ]);
    });

    test('is completed where a stream is here in part, and refused where it is another one', async () => {
      const store = await open();
      const parts = pieces('a', 'b', 'c');
      const facts = { id: 'a'.repeat(32), label: 'set', whose: null };
      const sha256 = hashByNode(parts);
      expect(await store.adoptStream({ ...facts, sha256: null, pieces: parts.slice(0, 1) })).toBe('added');
      expect(await store.openStreams()).toEqual([facts.id]);
      expect(await store.adoptStream({ ...facts, sha256: null, pieces: parts.slice(0, 1) })).toBe('already-there');
      expect(await store.adoptStream({ ...facts, sha256: null, pieces: pieces('x', 'b') })).toBe('conflict');
      expect(await store.adoptStream({ ...facts, sha256, pieces: pieces('a', 'b', 'x') })).toBe('altered');
      expect(await store.adoptStream({ ...facts, sha256, pieces: parts })).toBe('added');
      expect(await store.bytes(facts.id)).toEqual({ id: facts.id, pieces: parts, sha256 } satisfies StoredBytes);
      expect(await store.adoptStream({ ...facts, sha256: null, pieces: parts.slice(0, 2) })).toBe('already-there');
      const other = pieces('a', 'b', 'c', 'd');
      expect(await store.adoptStream({ ...facts, sha256: hashByNode(other), pieces: other })).toBe('conflict');
      expect(await store.problems()).toEqual([]);
    });
  });

  describe('erasing a person', () => {
    test('leaves nothing but a receipt, and everybody else as they were', async () => {
      const store = await open();
      const [ada, bo] = [await addPerson(store, 'Ada'), await addPerson(store, 'Bo')];
      const untold = await store.openBytes('set');
      await untold.append(pieces('only named')[0]);
      await store.add(note({ trial: { bytesId: untold.id } }, { kind: 'trial-begun', about: ada.visit.id }));
      const before = await store.documents({ whose: bo.person.id });
      const receipt = await store.erase(ada.person.id, asked);
      expect(receipt).toMatchObject({ personId: ada.person.id, documents: 5, streams: 2 });
      expect(receipt.bytes).toBeGreaterThanOrEqual('Adarisesonly named'.length);
      expect(await store.documents({ whose: ada.person.id })).toEqual([]);
      expect(await store.document(ada.person.id)).toBeUndefined();
      expect(await store.bytes(ada.streamId)).toBeUndefined();
      expect(await store.bytes(untold.id)).toBeUndefined();
      expect(await store.documents({ whose: bo.person.id })).toEqual(before);
      expect((await store.bytes(bo.streamId))?.pieces).toHaveLength(2);
      const { tombstone } = receipt;
      expect(tombstone).toMatchObject({
        kind: 'person-erased',
        about: ada.person.id,
        body: { documents: 5, streams: 2, bytes: receipt.bytes },
        ...asked,
      });
      expect(await store.documents({ kind: 'person-erased' })).toEqual([tombstone]);
      const everything = JSON.stringify(await allChanges(store, 100));
      expect(everything).not.toContain('Ada');
      expect(await store.problems()).toEqual([]);
    });

    test('is for good: nothing of them is taken any more, by no way', async () => {
      const [store, other] = [await open(), await open()];
      const ada = await addPerson(store, 'Ada');
      await copyInto(other, store);
      const running = await store.openBytes('set', ada.person.id);
      await store.erase(ada.person.id, asked);
      const gone = { name: 'StorageError', code: 'erased' };
      await expect(running.append(Uint8Array.of(1))).rejects.toMatchObject(gone);
      await expect(store.add(note(1, { about: ada.person.id }))).rejects.toMatchObject(gone);
      await expect(store.add(note(1, { about: ada.visit.id }))).rejects.toMatchObject(gone);
      await expect(store.add(note(1, { whose: ada.person.id }))).rejects.toMatchObject(gone);
      await expect(store.openBytes('set', ada.person.id)).rejects.toMatchObject(gone);
      await expect(store.erase(ada.person.id, asked)).rejects.toMatchObject(gone);
      expect(new Set(await copyInto(store, other))).toEqual(new Set(['erased']));
      // a store that learns of it first keeps to it too
      const third = await open();
      await copyInto(third, store);
      expect(new Set(await copyInto(third, other))).toEqual(new Set(['erased']));
      expect((await third.documents({})).map(({ kind }) => kind)).toEqual(['person-erased']);
    });

    test('of nobody is refused, as is anything of nobody by an empty name', async () => {
      const store = await open();
      await expect(store.erase('', asked)).rejects.toThrow(RangeError);
      await expect(store.add(note(1, { whose: '' }))).rejects.toThrow(RangeError);
      await expect(store.openBytes('set', '')).rejects.toThrow(RangeError);
      const kept = await store.add(note('of the clinic', { kind: 'person-erased', about: '' }));
      const other = await open();
      const answers = await other.adopt([
        { document: kept, whose: null },
        { document: kept, whose: '' },
      ]);
      expect(answers).toEqual(['added', 'altered']);
      expect((await other.add(note('still kept'))).body).toBe('still kept');
      expect(await other.problems()).toEqual([]);
    });

    test('of somebody of whom nothing is kept gives a receipt of nothing', async () => {
      const store = await open();
      expect(await store.erase('f'.repeat(32), asked)).toMatchObject({ documents: 0, streams: 0, bytes: 0 });
    });
  });

  describe('the last backup', () => {
    test('is none until one is noted, and then the latest', async () => {
      const store = await open();
      expect(await store.lastBackup()).toBeNull();
      const noted = { at: asked.at, documents: 3, streams: 1, bytes: 4000 };
      await store.noteBackup({ ...noted, documents: 2 });
      await store.noteBackup(noted);
      expect(await store.lastBackup()).toEqual(noted);
    });
  });

  test('a store writes unless it says why not', async () => {
    const store = await open();
    expect(store.access).toEqual({ writes: true, why: null });
    store.onAccess(() => undefined)();
  });
}
