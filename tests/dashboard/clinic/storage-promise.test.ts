import { expect, test } from 'vitest';
import { askToKeep, isPromised } from '../../../apps/dashboard/src/clinic/storage-promise.ts';

const saying = (persisted: boolean, persist: boolean): Parameters<typeof isPromised>[0] => ({
  persisted: () => Promise.resolve(persisted),
  persist: () => Promise.resolve(persist),
});

test('what the browser says of keeping is told, before and after it was asked', async () => {
  expect(await isPromised(saying(true, false))).toBe(true);
  expect(await isPromised(saying(false, true))).toBe(false);
  expect(await askToKeep(saying(false, true))).toBe(true);
  expect(await askToKeep(saying(true, false))).toBe(false);
});

test('a browser that does not tell, or fails, promises nothing and denies nothing', async () => {
  const fails = { persisted: () => Promise.reject(new Error('no')), persist: () => Promise.reject(new Error('no')) };
  for (const storage of [undefined, {}, fails]) {
    expect([await isPromised(storage), await askToKeep(storage)]).toEqual([null, null]);
  }
});
