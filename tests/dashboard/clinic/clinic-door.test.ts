import { MemoryStore, memoryVault, StorageError } from '@surae/storage';
import { describe, expect, test } from 'vitest';
import { ClinicDoor } from '../../../apps/dashboard/src/clinic/clinic-door.ts';
import { cheapCost } from '../../support/cheap-vault.ts';
import { MapMemory } from '../../support/device-memory.ts';

const passphrase = 'four green ladders';
const clock = { isoNow: () => '2026-03-01T09:00:00+01:00' };

function door(memory = new MapMemory()): ClinicDoor {
  const vault = memoryVault({ cost: cheapCost });
  const demo = new MemoryStore();
  return new ClinicDoor({
    clock,
    memory,
    demoStore: () => Promise.resolve(demo),
    vault: () => Promise.resolve(vault),
  });
}

describe('who works here', () => {
  test('can be another one from now on; what was written before keeps its code', async () => {
    const one = door();
    one.keepAuthor('RN');
    await one.create(passphrase);
    await one.enter(passphrase);
    const { store } = one.open!;
    const somebody = { name: 'A 17', bodyMassKg: null, heelLeverM: null, demo: false };
    await one.open!.book.addPerson(somebody);
    let told = 0;
    one.addEventListener('clinic-changed', () => (told += 1));
    await one.changeAuthor('KL');
    await one.changeAuthor('KL');
    expect([told, one.author, one.open!.store === store]).toEqual([1, 'KL', true]);
    await one.open!.book.addPerson(somebody);
    await one.open!.audit.write('exported');
    const written = await store.documents({ kind: ['person', 'author-changed', 'audit-entry'] });
    expect(written.map(({ kind, author }) => [kind, author])).toEqual([
      ['audit-entry', 'RN'],
      ['person', 'RN'],
      ['author-changed', 'KL'],
      ['person', 'KL'],
      ['audit-entry', 'KL'],
    ]);
    expect(written[2].body).toEqual({ before: 'RN', after: 'KL' });
  });

  test('stays who it was where the change cannot be kept, and nobody signs the demo clinic', async () => {
    const one = door();
    one.keepAuthor('RN');
    await one.create(passphrase);
    await one.enter(passphrase);
    one.open!.store.add = () => Promise.reject(new StorageError('full', 'full'));
    await expect(one.changeAuthor('KL')).rejects.toMatchObject({ code: 'full' });
    expect(one.author).toBe('RN');
    await one.openDemo();
    await one.changeAuthor('KL');
    expect(one.author).toBe('RN');
  });
});

describe('the door', () => {
  test('opens the demo clinic to everybody, and writes no trail there', async () => {
    const one = door();
    await one.openDemo();
    expect(one.open?.which).toBe('demo');
    await one.open?.audit.write('exported');
    expect(await one.open?.audit.entries()).toEqual([]);
  });

  test('opens a clinic of its own by the passphrase or by the code, and by nothing else', async () => {
    const one = door();
    one.keepAuthor('RN');
    expect(await one.hasOwn()).toBe(false);
    const code = await one.create(passphrase);
    expect([await one.hasOwn(), one.open]).toEqual([true, null]);
    for (const secret of [passphrase, code, code.toLowerCase()]) {
      await one.enter(secret);
      expect(one.open?.which).toBe('own');
      await one.lock();
      expect(one.open).toBeNull();
    }
    await expect(one.enter('four green ladder')).rejects.toMatchObject({ code: 'wrong-passphrase' });
    expect(one.open).toBeNull();
  });

  test('remembers beside the record that there was one, so that it is missed when it is gone', async () => {
    const memory = new MapMemory();
    const one = door(memory);
    one.keepAuthor('RN');
    await one.create(passphrase);
    expect(one.lastOpened).toBeNull();
    await one.enter(passphrase);
    await one.openDemo();
    const later = door(memory);
    expect([await later.hasOwn(), later.lastOpened]).toEqual([false, '2026-03-01T09:00:00+01:00']);
  });

  test('what was opened, locked and changed stands in the trail, by whom', async () => {
    const one = door();
    one.keepAuthor('RN');
    await one.create(passphrase);
    await one.enter(passphrase);
    await one.changePassphrase(passphrase, 'four blue ladders');
    await one.newRecoveryCode('four blue ladders');
    await one.lock();
    await one.enter('four blue ladders');
    const entries = (await one.open?.audit.entries()) ?? [];
    expect(entries.map(({ body }) => body.what).reverse()).toEqual([
      'clinic-opened',
      'passphrase-changed',
      'recovery-code-made',
      'clinic-locked',
      'clinic-opened',
    ]);
    expect(new Set(entries.map(({ author }) => author))).toEqual(new Set(['RN']));
  });

  test('a book of a clinic that was locked refuses', async () => {
    const one = door();
    await one.create(passphrase);
    await one.enter(passphrase);
    const { book } = one.open!;
    await book.addPerson({ name: 'A 17', bodyMassKg: null, heelLeverM: null, demo: false });
    await one.lock();
    await expect(book.people()).rejects.toMatchObject({ code: 'locked' });
  });

  test('tells of every change', async () => {
    const one = door();
    const seen: (string | null)[] = [];
    one.addEventListener('clinic-changed', () => seen.push(one.open?.which ?? null));
    await one.openDemo();
    await one.lock();
    await one.create(passphrase);
    await one.enter(passphrase);
    expect(seen).toEqual(['demo', null, 'own']);
  });

  test('a store that could not be had is asked for again', async () => {
    const vault = memoryVault({ cost: cheapCost });
    let asked = 0;
    const one = new ClinicDoor({
      clock,
      memory: new MapMemory(),
      demoStore: () => Promise.resolve(new MemoryStore()),
      vault: () => {
        asked += 1;
        return asked === 1 ? Promise.reject(new Error('blocked')) : Promise.resolve(vault);
      },
    });
    await expect(one.hasOwn()).rejects.toThrow('blocked');
    expect(await one.hasOwn()).toBe(false);
  });
});
