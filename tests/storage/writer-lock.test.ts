import { browserVault, IndexedDbStore, type StoreAccess } from '@surae/storage';
import { describe, expect, test } from 'vitest';
import { Access } from '../../packages/storage/src/access.ts';
import { browserLocks, writeInTurn } from '../../packages/storage/src/writer-lock.ts';
import { freshName } from '../support/browser-database.ts';
import { cheapCost, passphrase } from '../support/cheap-vault.ts';
import { HandLocks } from '../support/hand-locks.ts';
import { note } from '../support/store-laws.ts';

const elsewhere = { name: 'StorageError', code: 'written-elsewhere' };

describe('of two windows on one store', () => {
  test('one writes, the other reads, is told so, and writes once the first is closed', async () => {
    const [name, locks] = [freshName(), new HandLocks()];
    const first = await IndexedDbStore.open(name, { oneWriter: true, locks });
    const second = await IndexedDbStore.open(name, { oneWriter: true, locks });
    expect([first.access, second.access]).toEqual([
      { writes: true, why: null },
      { writes: false, why: 'written-elsewhere' },
    ]);
    const kept = await first.add(note('by the first'));
    expect(await second.documents({ kind: 'note' })).toEqual([kept]);
    await expect(second.add(note('by the second'))).rejects.toMatchObject(elsewhere);
    await expect(second.openBytes('set')).rejects.toMatchObject(elsewhere);
    await expect(second.erase('p1', { author: 'x', at: 'y' })).rejects.toMatchObject(elsewhere);
    const told = new Promise<StoreAccess>((resolve) => second.onAccess(resolve));
    first.close();
    expect(await told).toEqual({ writes: true, why: null });
    await second.add(note('by the second'));
    expect(await second.documents({ kind: 'note' })).toHaveLength(2);
  });

  test('the second of an encrypted store opens it for reading, and sees what the first adds of new people', async () => {
    const [name, locks] = [freshName(), new HandLocks()];
    const options = { oneWriter: true, locks, cost: cheapCost };
    const first = await browserVault(name, options);
    const { store } = await first.create(passphrase);
    const second = await browserVault(name, options);
    expect(second.access.writes).toBe(false);
    const reading = await second.open(passphrase);
    await store.add(note('Ada', { kind: 'person' }));
    expect((await reading.documents({ kind: 'person' })).map(({ body }) => body)).toEqual(['Ada']);
    await expect(second.changePassphrase(passphrase, `${passphrase} too`)).rejects.toMatchObject(elsewhere);
    await expect(reading.add(note(1))).rejects.toMatchObject(elsewhere);
    first.close();
    await new Promise<void>((resolve) => second.onAccess(() => resolve()));
    await reading.add(note('Bo', { kind: 'person' }));
  });

  test('one that is closed while it waits waits no more', async () => {
    const [locks, third] = [new HandLocks(), new Access()];
    const letFirstGo = await writeInTurn('a', new Access(), locks);
    const second = new Access();
    (await writeInTurn('a', second, locks))();
    await writeInTurn('a', third, locks);
    letFirstGo();
    await new Promise<void>((resolve) => third.listen(() => resolve()));
    expect(second.now.writes).toBe(false);
  });
});

test('a store that is opened for reading takes nothing, and holds up nobody', async () => {
  const [name, locks] = [freshName(), new HandLocks()];
  const reading = await IndexedDbStore.open(name, { readOnly: true, oneWriter: true, locks });
  const writing = await IndexedDbStore.open(name, { oneWriter: true, locks });
  await expect(reading.add(note(1))).rejects.toMatchObject({ code: 'read-only' });
  await writing.add(note(1));
  expect(await reading.documents({ kind: 'note' })).toHaveLength(1);
});

test('a store that cannot be opened lets go of its lock', async () => {
  const [name, locks] = [freshName(), new HandLocks()];
  const newer = indexedDB.open(name, 99);
  await new Promise((resolve) => newer.addEventListener('success', resolve));
  newer.result.close();
  await expect(IndexedDbStore.open(name, { oneWriter: true, locks })).rejects.toMatchObject({ code: 'newer-version' });
  const access = new Access();
  await writeInTurn(`surae store ${name}`, access, locks);
  expect(access.now.writes).toBe(true);
});

test('where there are no locks there are none to be had', () => {
  expect(browserLocks()).toBe((globalThis.navigator as Partial<Navigator> | undefined)?.locks);
});

test('an encrypted store is not opened as one that lies open', async () => {
  const name = freshName();
  const vault = await browserVault(name, { cost: cheapCost });
  await vault.create(passphrase);
  await expect(IndexedDbStore.open(name)).rejects.toMatchObject({ name: 'StorageError', code: 'locked' });
});
