import { existsSync } from 'node:fs';
import { type FileHandle, open as openFile } from 'node:fs/promises';
import { FileStore } from '@surae/storage/node';
import { expect, test, vi } from 'vitest';
import { heldStores } from '../../support/held-stores.ts';
import { freshFolder, OWN_FILES, openIn, removeFolders } from '../../support/store-folder.ts';
import { note } from '../../support/store-laws.ts';

removeFolders();
const held = heldStores();

async function handlePrototype(): Promise<FileHandle> {
  const handle = await openFile('/dev/null', 'r');
  await handle.close();
  return Object.getPrototypeOf(handle) as FileHandle;
}

const methodsOf = (prototype: FileHandle): Record<'write' | 'sync', (...given: unknown[]) => unknown> => {
  const method = (name: string): ((...given: unknown[]) => unknown) =>
    Object.getOwnPropertyDescriptor(prototype, name)!.value as (...given: unknown[]) => unknown;
  return { write: method('write'), sync: method('sync') };
};

test('the disk has everything before it counts as written', async () => {
  const prototype = await handlePrototype();
  const store = held(await FileStore.open(freshFolder()));
  const done: string[] = [];
  const { write, sync } = methodsOf(prototype);
  vi.spyOn(prototype, 'write').mockImplementation(function (this: FileHandle, ...given: unknown[]) {
    done.push('write');
    return Reflect.apply(write, this, given) as ReturnType<FileHandle['write']>;
  });
  vi.spyOn(prototype, 'sync').mockImplementation(function (this: FileHandle) {
    done.push('sync');
    return Reflect.apply(sync, this, []) as ReturnType<FileHandle['sync']>;
  });
  const writer = await store.openBytes('set');
  done.length = 0;
  await writer.append(Uint8Array.of(1));
  expect(done.at(-2)).toBe('write');
  expect(done.at(-1)).toBe('sync');
  done.length = 0;
  await store.add(note(1));
  expect(done).toEqual(['write', 'sync']);
});

test('a full disk refuses, keeps what there is, and takes the next once there is room', async () => {
  const folder = freshFolder();
  const store = held(await FileStore.open(folder));
  const kept = await store.add(note('before'));
  const prototype = await handlePrototype();
  const { write } = methodsOf(prototype);
  const full = vi.spyOn(prototype, 'write').mockImplementation(async function (this: FileHandle, ...given: unknown[]) {
    // half of it still fits
    const [bytes, offset, length, at] = given as [Uint8Array, number, number, number];
    await Reflect.apply(write, this, [bytes, offset, length >> 1, at]);
    throw Object.assign(new Error('no space left on device'), { code: 'ENOSPC' });
  });
  await expect(store.add(note('no room'))).rejects.toMatchObject({ name: 'StorageError', code: 'full' });
  full.mockRestore();
  const after = await store.add(note('after'));
  store.close();
  const again = held(await FileStore.open(folder));
  expect(await again.documents({})).toEqual([kept, after]);
  expect(await again.problems()).toEqual([]);
});

test.runIf(existsSync(OWN_FILES)).each(['sync', 'write'] as const)(
  'a disk that is full when a store is begun (%s) has no file left open, and takes it once there is room',
  async (name) => {
    const folder = freshFolder();
    const full = vi.spyOn(await handlePrototype(), name).mockImplementation(() => {
      throw Object.assign(new Error('no space left on device'), { code: 'ENOSPC' });
    });
    await expect(FileStore.open(folder)).rejects.toMatchObject({ name: 'StorageError', code: 'full' });
    expect(openIn(folder)).toEqual([]);
    full.mockRestore();
    expect(await held(await FileStore.open(folder)).documents({})).toEqual([]);
    expect(openIn(folder)).not.toEqual([]);
  },
);
