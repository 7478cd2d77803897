import { browserVault, IndexedDbStore, type StoredDocument } from '@surae/storage';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { backupLaws, backupOf, fileOf } from '../support/backup-laws.ts';
import { alterDocuments, alterRows, freshName, inDatabase } from '../support/browser-database.ts';
import { cheapCost, passphrase } from '../support/cheap-vault.ts';
import { hashByNode, note, pieces, storeLaws } from '../support/store-laws.ts';
import { whoseLaws } from '../support/whose-laws.ts';

const open = (): Promise<IndexedDbStore> => IndexedDbStore.open(freshName());
storeLaws(open);
whoseLaws(open);
backupLaws(open);

describe('encrypted', () => {
  const openVault = async () => (await (await browserVault(freshName(), { cost: cheapCost })).create(passphrase)).store;
  storeLaws(openVault);
  whoseLaws(openVault);
  backupLaws(openVault, passphrase);
});

afterEach(() => {
  vi.restoreAllMocks();
});

interface PieceRow {
  readonly stream: string;
  readonly index: number;
  readonly bytes: Uint8Array;
}

/** A store with one closed recording of four pieces, one that was never closed, and two documents. */
async function filled(): Promise<{ name: string; store: IndexedDbStore; closed: string; cut: string; ids: string[] }> {
  const name = freshName();
  const store = await IndexedDbStore.open(name);
  const [whole, cut] = [await store.openBytes('whole'), await store.openBytes('cut off')];
  for (const piece of pieces('a', 'b', 'c', 'd')) await Promise.all([whole.append(piece), cut.append(piece)]);
  await whole.close();
  const added = [await store.add(note({ count: 21 })), await store.add(note({ count: 19 }))];
  return { name, store, closed: whole.id, cut: cut.id, ids: added.map(({ id }) => id) };
}

test('what was kept is there when the store is opened again', async () => {
  const { name, store, closed, cut, ids } = await filled();
  const before = await store.documents({ kind: 'note' });
  store.close();
  const again = await IndexedDbStore.open(name);
  expect(await again.documents({ kind: 'note' })).toEqual(before);
  expect(before.map(({ id }) => id)).toEqual(ids);
  expect((await again.bytes(closed))?.sha256).toBe(hashByNode(pieces('abcd')));
  expect((await again.bytes(cut))?.pieces).toEqual(pieces('a', 'b', 'c', 'd'));
  expect(await again.openStreams()).toEqual([cut]);
  expect(await again.problems()).toEqual([]);
  const third = await again.add(note('later'));
  expect(third.sequence).toBeGreaterThan(before[1].sequence);
});

describe('a document that was altered in the database', () => {
  const changes: Partial<Record<keyof StoredDocument, unknown>> = {
    kind: 'note',
    schema: 2,
    about: 'p9',
    author: 'somebody else',
    at: '2026-03-01T09:30:00.001+01:00',
    body: { count: 22 },
    hash: hashByNode([]),
  };

  test.each(Object.keys(changes))(
    '%s: is refused by its id, left out of lists, and named as a problem',
    async (key) => {
      const name = freshName();
      const store = await IndexedDbStore.open(name);
      const kept = await store.add(note({ count: 20 }, { kind: 'note' }));
      const wrong = await store.add(note({ count: 21 }, { kind: 'other' }));
      await alterDocuments(name, (one) =>
        one.id === wrong.id ? { ...one, [key]: changes[key as keyof StoredDocument] } : one,
      );
      await expect(store.document(wrong.id)).rejects.toMatchObject({ name: 'StorageError', code: 'altered' });
      expect(await store.documents({ kind: 'note' })).toEqual([kept]);
      expect(await store.documents({ kind: 'other' })).toEqual([]);
      expect(await store.problems()).toEqual([{ id: wrong.id, code: 'altered' }]);
    },
  );

  test('another id: is refused under the new one', async () => {
    const name = freshName();
    const store = await IndexedDbStore.open(name);
    const { id } = await store.add(note({ count: 21 }));
    await alterDocuments(name, (one) => ({ ...one, id: 'f'.repeat(32) }));
    expect(await store.document(id)).toBeUndefined();
    await expect(store.document('f'.repeat(32))).rejects.toMatchObject({ code: 'altered' });
  });
});

describe('a recording that is damaged in the database', () => {
  test('without a piece is named, closed or not', async () => {
    const { name, store, closed, cut } = await filled();
    await alterRows<PieceRow>(name, 'pieces', (row) => (row.index === 1 ? undefined : row));
    expect(await store.problems()).toEqual([
      { id: closed, code: 'piece-missing' },
      { id: cut, code: 'piece-missing' },
    ]);
  });

  test('without its last piece is named once it was closed', async () => {
    const { name, store, closed } = await filled();
    await alterRows<PieceRow>(name, 'pieces', (row) => (row.index === 3 ? undefined : row));
    expect(await store.problems()).toEqual([{ id: closed, code: 'piece-missing' }]);
  });

  test('with an altered byte is named, and the rest is read as before', async () => {
    const { name, store, closed, cut, ids } = await filled();
    await alterRows<PieceRow>(name, 'pieces', (row) =>
      row.stream === closed && row.index === 2 ? { ...row, bytes: Uint8Array.of(0) } : row,
    );
    expect(await store.problems()).toEqual([{ id: closed, code: 'altered' }]);
    expect((await store.documents({ kind: 'note' })).map(({ id }) => id)).toEqual(ids);
    expect((await store.bytes(cut))?.pieces).toHaveLength(4);
  });
});

test('a backup of what is damaged names it, and is whole in all else', async () => {
  const { name, store, closed, cut, ids } = await filled();
  await alterRows<PieceRow>(name, 'pieces', (row) =>
    row.stream === closed && row.index === 2 ? { ...row, bytes: Uint8Array.of(0) } : row,
  );
  await alterDocuments(name, (one) => (one.id === ids[0] ? { ...one, body: 'other' } : one));
  const report = await store.checkBackup(fileOf(await backupOf(store)));
  expect(report).toMatchObject({ isWhole: true, documents: { whole: 1 }, streams: { whole: 1, missing: [] } });
  expect(report.lostBefore).toEqual([ids[0], closed]);
  const other = await open();
  await other.restore(fileOf(await backupOf(store)));
  expect((await other.bytes(cut))?.pieces).toHaveLength(4);
  expect(await other.problems()).toEqual([]);
});

test('every change is asked to be on the disk before it counts as done', async () => {
  const asked: [string[], IDBTransactionDurability | undefined][] = [];
  const original = Object.getOwnPropertyDescriptor(IDBDatabase.prototype, 'transaction')!
    .value as IDBDatabase['transaction'];
  vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
    this: IDBDatabase,
    names: string | Iterable<string>,
    mode?: IDBTransactionMode,
    options?: IDBTransactionOptions,
  ) {
    if (mode === 'readwrite') asked.push([[names].flat() as string[], options?.durability]);
    return original.call(this, names, mode, options);
  });
  await filled();
  expect(asked.filter(([, durability]) => durability !== 'strict')).toEqual([]);
  expect(new Set(asked.flatMap(([names]) => names))).toEqual(
    new Set(['documents', 'keys', 'streams', 'pieces', 'closings']),
  );
  expect(asked).toHaveLength(2 + 8 + 1 + 2);
});

test('a writer that failed once goes on with the next piece, and nothing is lost or twice there', async () => {
  const store = await IndexedDbStore.open(freshName());
  const writer = await store.openBytes('set');
  await writer.append(Uint8Array.of(1));
  const original = Object.getOwnPropertyDescriptor(IDBDatabase.prototype, 'transaction')!
    .value as IDBDatabase['transaction'];
  const broken = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementationOnce(() => {
    throw new DOMException('no room', 'QuotaExceededError');
  });
  broken.mockImplementation(function (this: IDBDatabase, ...given: Parameters<typeof original>) {
    return original.apply(this, given);
  });
  const failing = writer.append(Uint8Array.of(2));
  const following = writer.append(Uint8Array.of(3));
  await expect(failing).rejects.toMatchObject({ name: 'StorageError', code: 'full' });
  await following;
  await writer.append(Uint8Array.of(4));
  expect(await writer.close()).toBe(hashByNode([Uint8Array.of(1, 3, 4)]));
  expect(await store.problems()).toEqual([]);
});

test('a recording that could not be closed can be closed again', async () => {
  const store = await IndexedDbStore.open(freshName());
  const writer = await store.openBytes('set');
  await writer.append(Uint8Array.of(1));
  const original = Object.getOwnPropertyDescriptor(IDBDatabase.prototype, 'transaction')!
    .value as IDBDatabase['transaction'];
  const broken = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
    this: IDBDatabase,
    ...given: Parameters<typeof original>
  ) {
    if ([...given[0]].includes('closings') && given[1] === 'readwrite')
      throw new DOMException('no room', 'QuotaExceededError');
    return original.apply(this, given);
  });
  await expect(writer.close()).rejects.toMatchObject({ code: 'full' });
  expect(await store.openStreams()).toEqual([writer.id]);
  broken.mockRestore();
  expect(await writer.close()).toBe(hashByNode([Uint8Array.of(1)]));
  expect(await store.openStreams()).toEqual([]);
});

test('a store that was let go of says that there is none', async () => {
  const store = await IndexedDbStore.open(freshName());
  store.close();
  await expect(store.add(note('late'))).rejects.toMatchObject({ name: 'StorageError', code: 'unavailable' });
});

test('a store makes way for a window that wants to delete or upgrade it', async () => {
  const { name, store } = await filled();
  await inDatabase(name, () => Promise.resolve());
  const removed = indexedDB.deleteDatabase(name);
  await new Promise((resolve) => removed.addEventListener('success', resolve));
  await expect(store.documents({ kind: 'note' })).rejects.toMatchObject({ code: 'unavailable' });
});
