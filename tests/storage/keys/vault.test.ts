import { type RecordStore, Vault } from '@surae/storage';
import { describe, expect, test } from 'vitest';
import { KeptRecords } from '../../../packages/storage/src/kept-records.ts';
import { MemoryRows } from '../../../packages/storage/src/memory-rows.ts';
import { plainCodec } from '../../../packages/storage/src/plain-codec.ts';
import { cheapCost, passphrase } from '../../support/cheap-vault.ts';
import { hashByNode, note, pieces } from '../../support/store-laws.ts';
import { addPerson } from '../../support/whose-laws.ts';

const next = 'nine boats under the bridge';

async function created(): Promise<{ rows: MemoryRows; vault: Vault; code: string; store: RecordStore }> {
  const rows = new MemoryRows();
  const vault = new Vault(rows, { cost: cheapCost });
  const { recoveryCode, store } = await vault.create(passphrase);
  return { rows, vault, code: recoveryCode, store };
}

describe('a vault', () => {
  test('is empty, open, locked and open again, with everything in it', async () => {
    const rows = new MemoryRows();
    const vault = new Vault(rows, { cost: cheapCost });
    expect(await vault.state()).toBe('empty');
    const { store, recoveryCode } = await vault.create(passphrase);
    expect(await vault.state()).toBe('open');
    const ada = await addPerson(store, 'Ada');
    vault.lock();
    expect(await vault.state()).toBe('locked');
    expect(vault.store).toBeNull();
    for (const secret of [passphrase, recoveryCode]) {
      const again = await new Vault(rows, { cost: cheapCost }).open(secret);
      expect((await again.documents({ whose: ada.person.id })).map(({ kind }) => kind)).toHaveLength(4);
      expect((await again.bytes(ada.streamId))?.sha256).toBe(hashByNode(pieces('Ada', 'rises')));
      expect(await again.problems()).toEqual([]);
    }
    await expect(vault.open('something else entirely')).rejects.toMatchObject({ code: 'wrong-passphrase' });
    expect(await vault.state()).toBe('locked');
  });

  test('is made in an empty place only, with a passphrase that is long enough', async () => {
    const rows = new MemoryRows();
    const vault = new Vault(rows, { cost: cheapCost });
    await expect(vault.create('short')).rejects.toMatchObject({ code: 'short-passphrase' });
    await expect(vault.open(passphrase)).rejects.toMatchObject({ code: 'no-store' });
    await new KeptRecords(rows, plainCodec).add(note('open'));
    expect(await vault.state()).toBe('plain');
    await expect(vault.create(passphrase)).rejects.toMatchObject({ code: 'not-empty' });
    const other = await created();
    await expect(other.vault.create(passphrase)).rejects.toMatchObject({ code: 'not-empty' });
  });

  test('that is locked gives nothing away, and takes nothing but the rest of a recording that runs', async () => {
    const { vault, store } = await created();
    const ada = await addPerson(store, 'Ada');
    const writer = await store.openBytes('set', ada.person.id);
    await writer.append(Uint8Array.of(1));
    vault.lock();
    const locked = { name: 'StorageError', code: 'locked' };
    const calls: (() => unknown)[] = [
      () => store.add(note(1)),
      () => store.document(ada.person.id),
      () => store.documents({ kind: 'person' }),
      () => store.bytes(ada.streamId),
      () => store.openBytes('set'),
      () => store.openStreams(),
      () => store.problems(),
      () => store.changesSince(null),
      () => store.outlines({ made: 'x', kinds: [] }),
      () => store.adopt([]),
      () => store.lastBackup(),
      () => store.erase(ada.person.id, { author: 'x', at: 'y' }),
    ];
    for (const call of calls) await expect(Promise.resolve().then(call)).rejects.toMatchObject(locked);
    await writer.append(Uint8Array.of(2));
    const sha256 = await writer.close();
    const again = await vault.open(passphrase);
    expect(await again.bytes(writer.id)).toEqual({
      id: writer.id,
      pieces: [Uint8Array.of(1), Uint8Array.of(2)],
      sha256,
    });
  });

  test('that is locked while something is read gives nothing away either', async () => {
    const { vault, store } = await created();
    const ada = await addPerson(store, 'Ada');
    const reading = [store.documents({ kind: 'person' }), store.bytes(ada.streamId), store.lastBackup()];
    vault.lock();
    for (const one of await Promise.allSettled(reading)) {
      // what was read before the lock may have been nothing at all
      if (one.status === 'fulfilled') expect(one.value).toBeNull();
      else expect(one.reason).toMatchObject({ code: 'locked' });
    }
  });

  test('changes its passphrase and its code without touching a row', async () => {
    const { rows, vault, code, store } = await created();
    await addPerson(store, 'Ada');
    const before = structuredClone([await rows.documentsAfter(0, 100), await rows.streams(), await rows.keys()]);
    await expect(vault.changePassphrase('not the present one', next)).rejects.toMatchObject({
      code: 'wrong-passphrase',
    });
    await expect(vault.changePassphrase(passphrase, 'short')).rejects.toMatchObject({ code: 'short-passphrase' });
    await vault.changePassphrase(passphrase, next);
    const other = await vault.newRecoveryCode(next);
    expect(structuredClone([await rows.documentsAfter(0, 100), await rows.streams(), await rows.keys()])).toEqual(
      before,
    );
    const fresh = new Vault(rows, { cost: cheapCost });
    for (const old of [passphrase, code]) {
      await expect(fresh.open(old)).rejects.toMatchObject({ code: 'wrong-passphrase' });
    }
    expect(await (await fresh.open(next)).documents({})).toHaveLength(4);
    expect(await (await fresh.open(other)).documents({})).toHaveLength(4);
    // whoever has the code only may set another passphrase
    await fresh.changePassphrase(other, passphrase);
    expect(await (await fresh.open(passphrase)).documents({})).toHaveLength(4);
  });

  test('forgets the key of a person who was erased: what a disk still holds opens no more', async () => {
    const { rows, vault, store } = await created();
    const ada = await addPerson(store, 'Ada');
    const held = structuredClone(await rows.findDocuments({ whose: ada.person.id }));
    await store.erase(ada.person.id, { author: 'a tester', at: '2026-03-02T08:00:00+01:00' });
    expect(await rows.keys([ada.person.id])).toEqual([{ whose: ada.person.id, wrapped: null, erased: true }]);
    // by hand: the old rows laid back into the place
    const kept = (rows as unknown as { kept: unknown[] }).kept;
    kept.push(...held);
    const again = await vault.open(passphrase);
    expect(await again.documents({ whose: ada.person.id })).toEqual([]);
    expect((await again.problems()).map(({ code }) => code)).toEqual(Array(held.length).fill('key-missing'));
  });
});

describe('a row of a vault', () => {
  /** Everything that lies in the rows, as somebody finds it who has no key. */
  async function found(rows: MemoryRows): Promise<string> {
    const streams = await rows.streams();
    const bytes = (await Promise.all(streams.map(({ id }) => rows.pieces(id)))).flat().map(({ bytes: one }) => one);
    const settings = [...(rows as unknown as { settings: Map<string, unknown> }).settings];
    const all = [await rows.documentsAfter(0, 100), streams, bytes, await rows.keys(), settings];
    return JSON.stringify(all, (_key, value: unknown) =>
      value instanceof Uint8Array ? Buffer.from(value).toString('latin1') : value,
    );
  }

  test('shows ids, kinds and what they are about, and nothing of what was told', async () => {
    const { rows, store } = await created();
    const ada = await addPerson(store, 'Ada Mirlund-Tarn');
    const writer = await store.openBytes('label of a set', ada.person.id);
    await writer.append(new TextEncoder().encode('bytes of a trace'));
    const sha256 = await writer.close();
    await store.noteBackup({ at: '2026-03-02T08:00:00+01:00', documents: 1, streams: 1, bytes: 1 });
    const everything = await found(rows);
    expect(everything).toContain(ada.visit.id);
    for (const secret of [
      'Mirlund',
      'Tarn',
      'of a set',
      'trace',
      'a tester',
      '2026-',
      ada.person.hash,
      sha256,
      passphrase,
    ]) {
      expect(everything).not.toContain(secret);
    }
  });

  test('cannot be altered, nor laid in the place of another, without being noticed', async () => {
    const { rows, store } = await created();
    const kept = (rows as unknown as { kept: Record<string, unknown>[] }).kept;
    await addPerson(store, 'Ada');
    await addPerson(store, 'Bo');
    const whole = structuredClone(kept);
    const damage: ((row: Record<string, unknown>, other: Record<string, unknown>) => object)[] = [
      (row, other) => ({ ...row, sealed: other['sealed'] }),
      (row) => ({ ...row, kind: 'other' }),
      (row, other) => ({ ...row, about: other['id'] }),
      (row, other) => ({ ...row, id: other['id'] }),
      (row, other) => ({ ...row, whose: other['whose'] }),
      (row) => ({ ...row, whose: null }),
      (row) => ({ ...row, sealed: (row['sealed'] as Uint8Array).slice(1) }),
      (row) => ({ ...row, sealed: new Uint8Array(0) }),
      (row) => ({ ...row, sealed: undefined }),
    ];
    for (const change of damage) {
      kept.splice(0, kept.length, ...structuredClone(whole));
      kept[1] = change(kept[1], kept[5]) as Record<string, unknown>;
      const [problem, ...others] = await store.problems();
      expect(others).toEqual([]);
      expect(problem).toMatchObject({ id: kept[1]['id'] });
      expect(await store.documents({})).toHaveLength(whole.length - 1);
    }
  });

  test('of a recording cannot be altered or changed for another piece', async () => {
    const { rows, store } = await created();
    const ada = await addPerson(store, 'Ada');
    const streams = (rows as unknown as { streamRows: Map<string, { pieces: Uint8Array[]; row: object }> }).streamRows;
    const stream = streams.get(ada.streamId)!;
    const { pieces: whole, row } = structuredClone(stream);
    const lay = (given: Uint8Array[], other: object = row): void => {
      stream.pieces.splice(0, stream.pieces.length, ...given);
      stream.row = other;
    };
    const damaged = [{ id: ada.streamId, code: 'altered' }];
    lay([whole[1], whole[0]]);
    expect(await store.problems()).toEqual(damaged);
    lay([whole[0], whole[1].map((byte, i) => (i === 20 ? byte ^ 1 : byte))]);
    expect(await store.problems()).toEqual(damaged);
    expect((await store.bytes(ada.streamId))?.pieces).toEqual(pieces('Ada'));
    lay([whole[0]]);
    expect(await store.problems()).toEqual([{ id: ada.streamId, code: 'piece-missing' }]);
    // as if it had never been closed
    lay(whole, { ...row, pieces: null });
    expect(await store.problems()).toEqual(damaged);
    lay(whole);
    expect(await store.problems()).toEqual([]);
  });
});
