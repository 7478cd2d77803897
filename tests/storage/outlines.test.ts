import { type Json, MemoryStore, type Outlines, type RecordStore, Vault } from '@surae/storage';
import { describe, expect, test } from 'vitest';
import type { KeyRow, Rows } from '../../packages/storage/src/rows.ts';
import { backupOf, fileOf } from '../support/backup-laws.ts';
import { cheapCost, passphrase } from '../support/cheap-vault.ts';
import { heldStores } from '../support/held-stores.ts';
import { removeFolders } from '../support/store-folder.ts';
import { note } from '../support/store-laws.ts';
import { places } from '../support/store-oracle/places.ts';
import { asked } from '../support/whose-laws.ts';

removeFolders();
const held = heldStores();

const maker = { made: 'names 1', kinds: ['person', 'visit'] };

/** An encrypted store in a place, with two people in it. */
async function filled(name: 'memory' | 'browser' | 'files') {
  const rows = await places[name]().open();
  const vault = new Vault(rows, { cost: cheapCost });
  const { store } = await vault.create(passphrase);
  const ids: string[] = [];
  for (const person of ['Ada', 'Bo']) ids.push((await store.add(note({ name: person }, { kind: 'person' }))).id);
  const [ada, bo] = ids as [string, string];
  return { rows, vault, store, ada, bo };
}

/** Outlines of everybody, made of documents and kept. */
async function keptAnew(store: RecordStore): Promise<boolean> {
  const { mark } = await store.outlines(maker);
  const people = await store.documents({ kind: 'person' });
  const outlines = new Map(people.map(({ id, body }): [string, Json] => [id, { named: body }]));
  return store.keepOutlines(maker.made, outlines, mark);
}

const told = ({ kept, stale }: Outlines): unknown => ({ kept: Object.fromEntries(kept), stale });
const ofAda = { named: { name: 'Ada' } };
const ofBo = { named: { name: 'Bo' } };

/** Puts other rows of keys in the place of those that are there. */
async function alterKeys(rows: Rows, change: (row: KeyRow) => KeyRow): Promise<void> {
  const inside = rows as unknown as { keyRows: Map<string, KeyRow> };
  for (const row of await rows.keys()) inside.keyRows.set(row.whose, change(row));
}

describe.each(['memory', 'browser'] as const)('outlines in an encrypted store, in %s', (place) => {
  test('are nobody’s at first, and hold once they are kept, in this store and the next time it is opened', async () => {
    const { rows, vault, store, ada, bo } = await filled(place);
    expect(told(await store.outlines(maker))).toEqual({ kept: {}, stale: null });
    expect(await keptAnew(store)).toBe(true);
    const all = { kept: { [ada]: ofAda, [bo]: ofBo }, stale: [] };
    expect(told(await store.outlines(maker))).toEqual(all);
    vault.lock();
    const again = await new Vault(rows, { cost: cheapCost }).open(passphrase);
    expect(told(await again.outlines(maker))).toEqual(all);
    expect(await again.problems()).toEqual([]);
  });

  test('hold no more of whom something came since that they follow from, until they are kept again', async () => {
    const { store, ada, bo } = await filled(place);
    await keptAnew(store);
    await store.add(note('no kind of it', { about: bo }));
    await store.add(note('of the clinic'));
    expect((await store.outlines(maker)).stale).toEqual([]);
    await store.add(note('begun', { kind: 'visit', about: ada }));
    const cy = await store.add(note({ name: 'Cy' }, { kind: 'person' }));
    const { kept, stale, mark } = await store.outlines(maker);
    expect([...kept]).toEqual([[bo, ofBo]]);
    expect([...stale!].sort()).toEqual([ada, cy.id].sort());
    expect(
      await store.keepOutlines(
        maker.made,
        new Map<string, Json>([
          [ada, 'A'],
          [cy.id, null],
        ]),
        mark,
      ),
    ).toBe(true);
    expect(told(await store.outlines(maker))).toEqual({ kept: { [ada]: 'A', [bo]: ofBo, [cy.id]: null }, stale: [] });
  });

  test('hold of nobody where something of nobody came that they follow from, or another one makes them', async () => {
    const { store } = await filled(place);
    await keptAnew(store);
    expect((await store.outlines({ ...maker, made: 'names 2' })).stale).toBeNull();
    expect((await store.outlines(maker)).stale).toEqual([]);
    await store.add(note('of nobody', { kind: 'visit' }));
    expect(told(await store.outlines(maker))).toEqual({ kept: {}, stale: null });
  });

  test('are not kept over others that were kept meanwhile, and what came meanwhile is not lost on them', async () => {
    const { store, ada, bo } = await filled(place);
    const late = await store.outlines(maker);
    await store.add(note('begun', { kind: 'visit', about: ada }));
    await keptAnew(store);
    expect(
      await store.keepOutlines(
        maker.made,
        new Map([
          [ada, 'late'],
          [bo, 'late'],
        ]),
        late.mark,
      ),
    ).toBe(false);
    expect((await store.outlines(maker)).kept.get(ada)).toEqual(ofAda);
    // made of what was read before a visit came: it holds up to there only
    const { mark } = await store.outlines(maker);
    await store.add(note('begun', { kind: 'visit', about: bo }));
    expect(await store.keepOutlines(maker.made, new Map([[bo, 'early']]), mark)).toBe(true);
    expect((await store.outlines(maker)).stale).toEqual([bo]);
  });

  test('go with a person who is erased, and cannot be brought back', async () => {
    const { rows, store, ada, bo } = await filled(place);
    await keptAnew(store);
    const { mark } = await store.outlines(maker);
    await store.erase(ada, asked);
    expect(await rows.keys([ada])).toEqual([{ whose: ada, wrapped: null, erased: true }]);
    expect(told(await store.outlines(maker))).toEqual({ kept: { [bo]: ofBo }, stale: [] });
    const late = new Map<string, Json>([
      [ada, ofAda],
      [bo, ofBo],
    ]);
    expect(await store.keepOutlines(maker.made, late, mark)).toBe(false);
    expect(await store.keepOutlines(maker.made, new Map([[bo, ofBo]]), mark)).toBe(true);
    expect(await rows.keys([ada])).toEqual([{ whose: ada, wrapped: null, erased: true }]);
    // what was sealed before the key went, and is written after it
    const setting = {
      name: 'outlines',
      before: (await rows.setting('outlines')) as Uint8Array,
      value: Uint8Array.of(1),
    };
    expect(await rows.keepOutlines(new Map([[ada, Uint8Array.of(7)]]), setting)).toBe(true);
    expect(await rows.keys([ada])).toEqual([{ whose: ada, wrapped: null, erased: true }]);
  });

  test('lie encrypted, and stand in no backup', async () => {
    const { rows, store, ada } = await filled(place);
    await keptAnew(store);
    const [{ outline }] = await rows.keys([ada]);
    expect(Buffer.from(outline!).includes('"Ada"')).toBe(false);
    const kept = await rows.setting('outlines');
    expect(kept).toBeInstanceOf(Uint8Array);
    expect(Buffer.from(kept as Uint8Array).includes('names')).toBe(false);
    const other = await filled(place);
    await other.store.restore(fileOf(await backupOf(store)), { secret: passphrase });
    expect(await other.store.documents({ kind: 'person' })).toHaveLength(4);
    expect(told(await other.store.outlines(maker))).toEqual({ kept: {}, stale: null });
  });

  test('of a locked store are neither given nor taken', async () => {
    const { vault, store, ada } = await filled(place);
    const { mark } = await store.outlines(maker);
    await keptAnew(store);
    const reading = store.outlines(maker);
    vault.lock();
    const locked = { name: 'StorageError', code: 'locked' };
    await expect(reading).rejects.toMatchObject(locked);
    await expect(Promise.resolve().then(() => store.outlines(maker))).rejects.toMatchObject(locked);
    await expect(store.keepOutlines(maker.made, new Map([[ada, 1]]), mark)).rejects.toMatchObject(locked);
  });

  test('are not kept by a window that only reads', async () => {
    const { rows, store, ada } = await filled(place);
    const { mark } = await store.outlines(maker);
    rows.access.become({ writes: false, why: 'written-elsewhere' });
    expect(await store.keepOutlines(maker.made, new Map([[ada, 1]]), mark)).toBe(false);
    expect(await rows.setting('outlines')).toBeUndefined();
  });

  test('of more than can be looked at since are everybody’s, made anew', async () => {
    const { store, ada } = await filled(place);
    await keptAnew(store);
    const from = new MemoryStore();
    for (let i = 0; i < 499; i += 1) await from.add(note(i));
    await store.adopt((await from.changesSince(null, 1000)).documents);
    expect((await store.outlines(maker)).stale).toEqual([]);
    await store.add(note('one more', { about: ada }));
    expect((await store.outlines(maker)).stale).toBeNull();
  });
});

describe('outlines that were altered', () => {
  test('hold no more, those of others do', async () => {
    const { rows, store, ada, bo } = await filled('memory');
    await keptAnew(store);
    const turn = (bytes: Uint8Array): Uint8Array => bytes.map((byte, i) => (i === bytes.length - 1 ? byte ^ 1 : byte));
    await alterKeys(rows, (row) => (row.whose === ada ? { ...row, outline: turn(row.outline!) } : row));
    expect(told(await store.outlines(maker))).toEqual({ kept: { [bo]: ofBo }, stale: [ada] });
    await keptAnew(store);
    // that of somebody else in the place of their own
    const [other] = await rows.keys([bo]);
    await alterKeys(rows, (row) => (row.whose === ada ? { ...row, outline: other.outline! } : row));
    expect(told(await store.outlines(maker))).toEqual({ kept: { [bo]: ofBo }, stale: [ada] });
    expect(await store.problems()).toEqual([]);
  });

  test('are everybody’s where what is said of all of them was altered', async () => {
    const { rows, store } = await filled('memory');
    await keptAnew(store);
    await rows.keepSetting('outlines', Uint8Array.of(1, 2, 3));
    expect(told(await store.outlines(maker))).toEqual({ kept: {}, stale: null });
    expect(await keptAnew(store)).toBe(true);
    expect((await store.outlines(maker)).stale).toEqual([]);
  });

  test('are kept for nobody where somebody to be kept has no key: they would be missing the next time', async () => {
    const { rows, store, ada } = await filled('memory');
    const { mark } = await store.outlines(maker);
    expect(
      await store.keepOutlines(
        maker.made,
        new Map([
          [ada, 1],
          ['f'.repeat(32), 2],
        ]),
        mark,
      ),
    ).toBe(false);
    expect(await rows.setting('outlines')).toBeUndefined();
    expect(
      await store.keepOutlines(
        maker.made,
        new Map([
          [ada, 1],
          ['f'.repeat(32), null],
        ]),
        mark,
      ),
    ).toBe(true);
  });
});

test.each([
  ['that lies open', () => Promise.resolve<RecordStore>(new MemoryStore())],
  ['of files', async () => held((await filled('files')).store)],
])('a store %s keeps none', async (_what, open) => {
  const store = await open();
  await store.add(note({ name: 'Cy' }, { kind: 'person' }));
  expect(await keptAnew(store)).toBe(false);
  expect(told(await store.outlines(maker))).toEqual({ kept: {}, stale: null });
});
