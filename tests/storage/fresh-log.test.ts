import 'fake-indexeddb/auto';
import { freshLog } from '@surae/storage';
import { expect, test, vi } from 'vitest';

const logs = async (): Promise<string[]> =>
  (await indexedDB.databases()).flatMap(({ name }) => (name === 'surae log' ? [name] : []));

test('more than a log holds is written, and nothing of it stays', async () => {
  let written = 0;
  const put = IDBObjectStore.prototype.put;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value: Uint8Array, key) {
    written += value.length;
    expect(new Set(value).size).toBeGreaterThan(200);
    return put.call(this, value, key);
  });
  await freshLog();
  expect(written).toBeGreaterThan(4 * 2 ** 20);
  expect(await logs()).toEqual([]);
});

test('where there is no room or no store, nothing is said: the records say it themselves', async () => {
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('no room', 'QuotaExceededError');
  });
  await expect(freshLog()).resolves.toBeUndefined();
  vi.stubGlobal('indexedDB', undefined);
  await expect(freshLog()).resolves.toBeUndefined();
});
