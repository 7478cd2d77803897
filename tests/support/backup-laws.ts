import type { BackupSource, RecordStore, StoredDocument } from '@surae/storage';
import { describe, expect, test } from 'vitest';
import { note, pieces } from './store-laws.ts';
import { addPerson, asked } from './whose-laws.ts';

/** A backup of a store as one piece of bytes. */
export async function backupOf(store: RecordStore): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  for await (const part of store.backup()) parts.push(part);
  return Uint8Array.from(Buffer.concat(parts));
}

/** Bytes as a file that comes in parts of a length. */
export function fileOf(bytes: Uint8Array, partLength = 1000): BackupSource {
  return async function* () {
    for (let at = 0; at < bytes.length; at += partLength) {
      yield await Promise.resolve(bytes.subarray(at, at + partLength));
    }
  };
}

/** What a store holds, without the places that it has in it. */
export async function contentOf(store: RecordStore): Promise<unknown> {
  const documents = await store.documents({});
  const ids = new Set(documents.flatMap(({ body }) => JSON.stringify(body).match(/\b[0-9a-f]{32}\b/g) ?? []));
  const streams = await Promise.all([...ids].sort().map((id) => store.bytes(id)));
  const bySequence = (one: StoredDocument): unknown => ({ ...one, sequence: null });
  return { documents: documents.map(bySequence), streams, open: await store.openStreams() };
}

/** Two people, a recording that was cut off, something of the clinic. */
export async function fillStore(store: RecordStore): Promise<{ readonly ada: string; readonly bo: string }> {
  const [ada, bo] = [await addPerson(store, 'Ada'), await addPerson(store, 'Bo')];
  const cut = await store.openBytes('cut off', bo.person.id);
  await cut.append(pieces('so far')[0]);
  await store.add(note({ bytesId: cut.id }, { kind: 'set-begun', about: bo.visit.id }));
  await store.add(note('of the clinic'));
  return { ada: ada.person.id, bo: bo.person.id };
}

/** What a backup of any store keeps to; `secret` opens those of an encrypted one. */
export function backupLaws(open: () => Promise<RecordStore>, secret?: string): void {
  const opened = secret === undefined ? {} : { secret };

  describe('a backup', () => {
    test('is whole when it is read back, and fills an empty store with the same', async () => {
      const [store, empty] = [await open(), await open()];
      await fillStore(store);
      const bytes = await backupOf(store);
      const report = await store.checkBackup(fileOf(bytes, 77));
      expect(report).toEqual({
        isWhole: true,
        isEncrypted: secret !== undefined,
        documents: { whole: 10, missing: [] },
        streams: { whole: 3, missing: [] },
        isListWhole: true,
        lostBefore: [],
        problems: [],
        bytes: bytes.length,
      });
      const restored = await empty.restore(fileOf(bytes), opened);
      expect(restored).toEqual({ ...report, added: 13, alreadyThere: 0, refused: [] });
      expect(await contentOf(empty)).toEqual(await contentOf(store));
      expect(await empty.problems()).toEqual([]);
    });

    test('adds to a filled store only what is not there, however often', async () => {
      const [store, other] = [await open(), await open()];
      await fillStore(store);
      await fillStore(other);
      const bytes = await backupOf(store);
      expect(await other.restore(fileOf(bytes), opened)).toMatchObject({ added: 13, alreadyThere: 0, refused: [] });
      const once = await contentOf(other);
      expect(await other.restore(fileOf(bytes), opened)).toMatchObject({ added: 0, alreadyThere: 13, refused: [] });
      expect(await contentOf(other)).toEqual(once);
      expect(await other.documents({})).toHaveLength(20);
      // what came since the backup stays
      await store.add(note('since then'));
      expect(await store.restore(fileOf(bytes))).toMatchObject({ added: 0, alreadyThere: 13, refused: [] });
      expect(await store.documents({})).toHaveLength(11);
    });

    test('of an empty store is whole too', async () => {
      const bytes = await backupOf(await open());
      expect(await (await open()).restore(fileOf(bytes), opened)).toMatchObject({ isWhole: true, added: 0 });
    });

    test('brings nobody back who was erased, and tells of them', async () => {
      const [store, empty] = [await open(), await open()];
      const { ada } = await fillStore(store);
      const before = await backupOf(store);
      await store.erase(ada, asked);
      const report = await store.restore(fileOf(before));
      expect(report.refused.map(({ why }) => why)).toEqual(Array(5).fill('erased'));
      expect(await store.documents({ whose: ada })).toEqual([]);
      // a backup that was made later says who was erased
      await empty.restore(fileOf(await backupOf(store)), opened);
      await empty.restore(fileOf(before), opened);
      expect(await empty.documents({ whose: ada })).toEqual([]);
      expect(await contentOf(empty)).toEqual(await contentOf(store));
    });

    test('that was cut off restores nothing, tells what is whole, and gives that if it is asked for', async () => {
      const [store, empty] = [await open(), await open()];
      await fillStore(store);
      const bytes = await backupOf(store);
      const lines = Buffer.from(bytes).toString('latin1').split('\n');
      // the header, the list, six documents, half of the seventh
      const half = bytes.slice(0, lines.slice(0, 8).join('\n').length + 40);
      const ids = (await store.documents({})).map(({ id }) => id);
      const told = {
        isWhole: false,
        isListWhole: true,
        documents: { whole: 6, missing: ids.slice(6) },
        streams: { whole: 0 },
        problems: [
          { line: 9, code: 'altered' },
          { line: 10, code: 'cut-off' },
        ],
      };
      await expect(empty.restore(fileOf(half), opened)).rejects.toMatchObject({
        name: 'StorageError',
        code: 'damaged-backup',
        report: told,
      });
      expect(await empty.documents({})).toEqual([]);
      const partly = await empty.restore(fileOf(half), { ...opened, evenIfDamaged: true });
      expect(partly).toMatchObject({ ...told, added: 6 });
      expect((await empty.documents({})).map(({ id }) => id)).toEqual(ids.slice(0, 6));
      // the whole one adds the rest
      expect(await empty.restore(fileOf(bytes), opened)).toMatchObject({ added: 7, alreadyThere: 6 });
      expect(await contentOf(empty)).toEqual(await contentOf(store));
    });

    test('shows names only where the store does', async () => {
      const store = await open();
      await fillStore(store);
      const bytes = await backupOf(store);
      // with its quotes: three letters alone stand in random bytes now and then
      expect(Buffer.from(bytes).includes('"Ada"')).toBe(secret === undefined);
    });
  });
}
