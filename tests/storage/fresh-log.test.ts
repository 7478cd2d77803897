import 'fake-indexeddb/auto';
import { freshLog } from '@surae/storage';
import { expect, test, vi } from 'vitest';

const logs = async (): Promise<string[]> =>
  (await indexedDB.databases()).flatMap(({ name }) => (name === 'surae log' ? [name] : []));

test('more than a log holds is written, and nothing of it stays', async () => {
  const puts = vi.spyOn(IDBObjectStore.prototype, 'put');
  await freshLog();
  const parts = puts.mock.calls.map(([part]) => part as Uint8Array);
  expect(parts.reduce((sum, { length }) => sum + length, 0)).toBeGreaterThan(4 * 2 ** 20);
  // noise cannot be packed
  expect(new Set(parts[0]).size).toBeGreaterThan(200);
  expect(await logs()).toEqual([]);
});

test('where there is no room or no store, nothing is said: the records say it themselves', async () => {
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('no room', 'QuotaExceededError');
  });
  await expect(freshLog()).resolves.toBeUndefined();
  expect(await logs()).toEqual([]);
  vi.stubGlobal('indexedDB', undefined);
  await expect(freshLog()).resolves.toBeUndefined();
});
