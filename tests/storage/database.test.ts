import { IndexedDbStore, StorageError } from '@surae/storage';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { type DatabaseStep, databaseVersion, openDatabase, storageError } from '../../packages/storage/src/database.ts';
import { freshName } from '../support/browser-database.ts';

afterEach(() => {
  vi.unstubAllGlobals();
});

const first: DatabaseStep = (database) => {
  database.createObjectStore('streams', { keyPath: 'sequence', autoIncrement: true }).createIndex('id', 'id');
};
const second: DatabaseStep = (database) => {
  database.createObjectStore('pieces', { keyPath: ['stream', 'index'] });
};

const row = { id: 's1', whose: null, label: 'set', sha256: null, pieces: null };

test('the present version has all object stores', async () => {
  const database = await openDatabase(freshName());
  expect([...database.objectStoreNames]).toEqual(['closings', 'documents', 'keys', 'pieces', 'settings', 'streams']);
  expect(database.version).toBe(databaseVersion);
});

test('an older database takes the steps that it lacks, and keeps what it holds', async () => {
  const name = freshName();
  const old = await openDatabase(name, [first]);
  await old.add('streams', row);
  old.close();
  const taken: number[] = [];
  const steps = [first, second].map(
    (step, i): DatabaseStep =>
      (database, change) => {
        taken.push(i);
        return step(database, change);
      },
  );
  const database = await openDatabase(name, steps);
  expect(taken).toEqual([1]);
  expect([...database.objectStoreNames]).toEqual(['pieces', 'streams']);
  expect(await database.getAll('streams')).toEqual([{ ...row, sequence: 1 }]);
});

test('a step that fails leaves the database as it was', async () => {
  const name = freshName();
  const old = await openDatabase(name, [first]);
  await old.add('streams', row);
  old.close();
  const broken: DatabaseStep = () => {
    throw new RangeError('half way');
  };
  await expect(openDatabase(name, [first, second, broken])).rejects.toMatchObject({ name: 'StorageError' });
  const again = await openDatabase(name, [first]);
  expect([...again.objectStoreNames]).toEqual(['streams']);
  expect(await again.getAll('streams')).toEqual([{ ...row, sequence: 1 }]);
});

test('a database of a newer version is refused and left alone', async () => {
  const name = freshName();
  const newer = await openDatabase(name, [first, second]);
  newer.close();
  await expect(openDatabase(name, [first])).rejects.toMatchObject({ name: 'StorageError', code: 'newer-version' });
  const steps = Array.from({ length: databaseVersion + 1 }, (_, i) => (i === 0 ? first : () => undefined));
  (await openDatabase(`${name}-b`, steps)).close();
  await expect(IndexedDbStore.open(`${name}-b`)).rejects.toMatchObject({ code: 'newer-version' });
});

test('a window with an older version that does not let go is said to block', async () => {
  const name = freshName();
  const held = indexedDB.open(name, 1);
  await new Promise((resolve) => held.addEventListener('success', resolve));
  await expect(openDatabase(name, [first, second])).rejects.toMatchObject({ name: 'StorageError', code: 'blocked' });
  held.result.close();
});

test('a window of ours lets go when a newer one wants to upgrade', async () => {
  const name = freshName();
  await openDatabase(name, [first]);
  const database = await openDatabase(name, [first, second]);
  expect(database.version).toBe(2);
});

test('a browser without a store is said to have none', async () => {
  vi.stubGlobal('indexedDB', undefined);
  await expect(IndexedDbStore.open(freshName())).rejects.toMatchObject({ name: 'StorageError', code: 'unavailable' });
});

describe('an error of the browser becomes one of ours', () => {
  test.each([
    ['QuotaExceededError', 'full'],
    ['VersionError', 'newer-version'],
    ['SecurityError', 'unavailable'],
    ['InvalidStateError', 'unavailable'],
    ['UnknownError', 'failed'],
  ])('%s', (name, code) => {
    const cause = new DOMException('why', name);
    expect(storageError(cause)).toMatchObject({ name: 'StorageError', code, cause });
  });

  test('one of ours stays what it is, and anything else has failed', () => {
    const own = new StorageError('altered', 'x');
    expect(storageError(own)).toBe(own);
    expect(storageError('a text')).toMatchObject({ code: 'failed', message: 'The store failed: a text' });
  });
});
