import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { browserVault, IndexedDbStore, MemoryStore, type RecordStore, type StoredDocument } from '@surae/storage';
import { FileStore, fileVault } from '@surae/storage/node';
import { describe, expect, test } from 'vitest';
import { fileOf } from '../support/backup-laws.ts';
import { freshName } from '../support/browser-database.ts';
import { fixturePath } from '../support/fixture.ts';
import { freshFolder, removeFolders } from '../support/store-folder.ts';
import { asked } from '../support/whose-laws.ts';

removeFolders();

interface Held {
  readonly documents: readonly StoredDocument[];
  readonly closed: string;
  readonly cut: string;
}

interface FrozenForm {
  readonly holds: Held;
  readonly database: { readonly version: number; readonly stores: Readonly<Record<string, readonly object[]>> };
  readonly backup: Uint8Array;
  readonly files: { readonly holds: Held; readonly files: Readonly<Record<string, Uint8Array>> };
}

interface Frozen {
  readonly passphrase: string;
  readonly open: FrozenForm;
  readonly encrypted: FrozenForm;
}

const frozen = JSON.parse(readFileSync(fixturePath('stores/version-2.json'), 'utf8'), (_key, value: unknown) => {
  const { base64 } = (value ?? {}) as { base64?: string };
  return base64 === undefined ? value : Uint8Array.from(Buffer.from(base64, 'base64'));
}) as Frozen;

/** The object stores as version 2 had them: written out here, so that they stay what they were. */
function makeVersion2(database: IDBDatabase): void {
  const documents = database.createObjectStore('documents', { keyPath: 'sequence', autoIncrement: true });
  documents.createIndex('id', 'id', { unique: true });
  documents.createIndex('kind', 'kind');
  documents.createIndex('kind-about', ['kind', 'about']);
  documents.createIndex('about', 'about');
  documents.createIndex('whose', 'whose');
  const streams = database.createObjectStore('streams', { keyPath: 'sequence', autoIncrement: true });
  streams.createIndex('id', 'id', { unique: true });
  database.createObjectStore('pieces', { keyPath: ['stream', 'index'] });
  database.createObjectStore('closings', { keyPath: 'closing', autoIncrement: true });
  database.createObjectStore('keys', { keyPath: 'whose' });
  database.createObjectStore('settings', { keyPath: 'name' });
}

async function thawDatabase({ database: { version, stores } }: FrozenForm): Promise<string> {
  const name = freshName();
  const opening = indexedDB.open(name, version);
  opening.addEventListener('upgradeneeded', () => {
    makeVersion2(opening.result);
    for (const [objectStore, rows] of Object.entries(stores)) {
      for (const row of rows) opening.transaction!.objectStore(objectStore).add(row);
    }
  });
  await new Promise((resolve) => opening.addEventListener('success', resolve));
  opening.result.close();
  return name;
}

function thawFiles({ files: { files } }: FrozenForm): string {
  const folder = freshFolder();
  for (const [path, bytes] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), bytes);
  }
  return folder;
}

async function expectHeld(store: RecordStore, { documents, closed, cut }: Held): Promise<void> {
  const plain = (all: readonly StoredDocument[]): unknown => all.map((one) => ({ ...one, sequence: null }));
  expect(plain(await store.documents({}))).toEqual(plain(documents));
  expect(documents.map(({ kind }) => kind)).toEqual(['person', 'visit', 'set-begun', 'set-begun', 'person-erased']);
  const text = async (id: string): Promise<unknown> => Buffer.concat((await store.bytes(id))!.pieces).toString();
  expect([await text(closed), await text(cut)]).toEqual(['heel raises', 'cut off']);
  expect(await store.openStreams()).toEqual([cut]);
  const [person] = documents;
  expect(await store.documents({ whose: person.id })).toHaveLength(4);
  expect(await store.problems()).toEqual([]);
  // who was erased stays so
  const erased = documents.find(({ kind }) => kind === 'person-erased')!.about!;
  await expect(store.erase(erased, asked)).rejects.toMatchObject({ code: 'erased' });
}

const noted = { at: '2026-11-29T07:30:00.000+01:00', documents: 5, streams: 2, bytes: 4000 };

describe('what version 2 wrote, open', () => {
  const { open } = frozen;

  test('in the browser opens with all that it held', async () => {
    const store = await IndexedDbStore.open(await thawDatabase(open));
    await expectHeld(store, open.holds);
    expect(await store.lastBackup()).toEqual(noted);
  });

  test('in files opens with all that it held', async () => {
    const store = await FileStore.open(thawFiles(open));
    await expectHeld(store, open.files.holds);
    expect(await store.lastBackup()).toEqual(noted);
    store.close();
  });

  test('as a backup is restored', async () => {
    const store = new MemoryStore();
    expect(await store.restore(fileOf(open.backup))).toMatchObject({ isWhole: true, added: 7, refused: [] });
    await expectHeld(store, open.holds);
  });
});

describe('what version 2 wrote, encrypted', () => {
  const { encrypted, passphrase } = frozen;

  test('in the browser opens by its passphrase with all that it held', async () => {
    const store = await (await browserVault(await thawDatabase(encrypted))).open(passphrase);
    await expectHeld(store, encrypted.holds);
    expect(await store.lastBackup()).toEqual(noted);
  });

  test('in files opens by its passphrase with all that it held', async () => {
    const store = await (await fileVault(thawFiles(encrypted))).open(passphrase);
    await expectHeld(store, encrypted.files.holds);
    store.close();
  });

  test('as a backup is restored by its passphrase', async () => {
    const store = new MemoryStore();
    const report = await store.restore(fileOf(encrypted.backup), { secret: passphrase });
    expect(report).toMatchObject({ isWhole: true, isEncrypted: true, added: 7 });
    await expectHeld(store, encrypted.holds);
  });
});
