import { spawnSync } from 'node:child_process';
import { appendFileSync, existsSync, readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { RecordStore } from '@surae/storage';
import { FileStore, fileVault } from '@surae/storage/node';
import { describe, expect, test } from 'vitest';
import { frameOf } from '../../../packages/storage/src/node/frames.ts';
import { backupLaws, contentOf, fillStore } from '../../support/backup-laws.ts';
import { cheapCost, passphrase } from '../../support/cheap-vault.ts';
import { heldStores } from '../../support/held-stores.ts';
import { freshFolder, removeFolders } from '../../support/store-folder.ts';
import { note, pieces, storeLaws } from '../../support/store-laws.ts';
import { addPerson, asked, whoseLaws } from '../../support/whose-laws.ts';

removeFolders();
const held = heldStores();

const open = async (): Promise<RecordStore> => held(await FileStore.open(freshFolder()));
storeLaws(open);
whoseLaws(open);
backupLaws(open);

describe('encrypted', () => {
  const openVault = async (): Promise<RecordStore> =>
    held((await (await fileVault(freshFolder(), { cost: cheapCost })).create(passphrase)).store);
  storeLaws(openVault);
  whoseLaws(openVault);
  backupLaws(openVault, passphrase);

  test('nothing of what was told lies in any file', async () => {
    const folder = freshFolder();
    const vault = await fileVault(folder, { cost: cheapCost });
    const { store } = await vault.create(passphrase);
    await addPerson(store, 'Mirlund-Tarn');
    vault.close();
    await expect(FileStore.open(folder)).rejects.toMatchObject({ name: 'StorageError', code: 'locked' });
    const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
    expect(files.filter(({ name }) => name !== 'writer')).toHaveLength(2);
    for (const file of files) {
      const bytes = readFileSync(join(file.parentPath, file.name));
      for (const secret of ['Mirlund', 'rises', 'a tester', '2026-']) expect(bytes.includes(secret)).toBe(false);
    }
    const again = held(await (await fileVault(folder)).open(passphrase));
    expect((await again.documents({ kind: 'person' })).map(({ body }) => body)).toEqual([{ name: 'Mirlund-Tarn' }]);
  });
});

const log = (folder: string): string => join(folder, 'records.log');
const piecesFile = (folder: string, id: string): string => join(folder, 'streams', `${id}.pieces`);

/** A filled store that was let go of. */
async function left(): Promise<{ folder: string; content: unknown; streamId: string }> {
  const folder = freshFolder();
  const store = held(await FileStore.open(folder));
  await fillStore(store);
  const content = await contentOf(store);
  const [{ body }] = await store.documents({ kind: 'set-begun' });
  store.close();
  return { folder, content, streamId: (body as { bytesId: string }).bytesId };
}

describe('a store of files', () => {
  test('that is opened again holds what it held', async () => {
    const { folder, content } = await left();
    const store = held(await FileStore.open(folder));
    expect(await contentOf(store)).toEqual(content);
    expect(await store.problems()).toEqual([]);
    const { sequence } = await store.add(note('later'));
    expect(sequence).toBe(11);
  });

  test('that was cut off while it wrote opens with all that was acknowledged, keeps the rest aside and says so', async () => {
    const { folder, content } = await left();
    const whole = readFileSync(log(folder));
    const next = frameOf(new TextEncoder().encode('{"op":"documents","rows":[]}'));
    for (let length = 1; length < next.length; length += 7) {
      writeFileSync(log(folder), Buffer.concat([whole, next.subarray(0, length)]));
      // whoever only reads says so too, and leaves it
      const reading = held(await FileStore.open(folder, { readOnly: true }));
      expect(await reading.problems()).toEqual([{ id: 'records.log', code: 'half-written' }]);
      reading.close();
      const store = held(await FileStore.open(folder));
      expect(await store.problems()).toEqual([{ id: 'records.log', code: 'half-written' }]);
      expect(await contentOf(store)).toEqual(content);
      expect(readFileSync(join(folder, 'half-written'))).toEqual(Buffer.from(next.subarray(0, length)));
      store.close();
    }
    const store = held(await FileStore.open(folder));
    expect(await store.problems()).toEqual([]);
    expect(readFileSync(log(folder))).toEqual(whole);
  });

  test('cut at any place holds the documents before it, whole', async () => {
    const { folder } = await left();
    const whole = readFileSync(log(folder));
    let before = 0;
    for (let length = 0; length <= whole.length; length += 211) {
      writeFileSync(log(folder), whole.subarray(0, length));
      const store = held(await FileStore.open(folder, { readOnly: true }));
      const { length: count } = await store.documents({});
      expect(count).toBeGreaterThanOrEqual(before);
      before = count;
      store.close();
    }
    expect(before).toBeGreaterThan(8);
  });

  test('with an altered byte names what it was part of and gives all else', async () => {
    const { folder } = await left();
    const whole = readFileSync(log(folder));
    const at = whole.indexOf('"told":"Ada"') + 9;
    const altered = Buffer.from(whole);
    altered[at] ^= 1;
    writeFileSync(log(folder), altered);
    const store = held(await FileStore.open(folder));
    expect(await store.documents({})).toHaveLength(9);
    const [problem, ...others] = await store.problems();
    expect(problem).toMatchObject({ code: 'altered', id: expect.stringMatching(/^[0-9a-f]{32}$/) as string });
    expect(others).toEqual([]);
    // and what is altered while it is open is noticed when it is read
    const other = whole.indexOf('"told":"Bo"') + 9;
    altered[other] ^= 1;
    writeFileSync(log(folder), altered);
    expect(await store.documents({})).toHaveLength(8);
    expect(await store.problems()).toHaveLength(2);
    store.close();
  });

  test('with an altered last record names it, also when it is opened again', async () => {
    const { folder } = await left();
    const bytes = readFileSync(log(folder));
    bytes[bytes.length - 8] ^= 1;
    writeFileSync(log(folder), bytes);
    for (let times = 0; times < 2; times += 1) {
      const store = held(await FileStore.open(folder));
      expect(await store.documents({})).toHaveLength(9);
      expect(await store.problems()).toMatchObject([{ code: 'altered' }]);
      store.close();
    }
  });

  test('with a recording that was half written gives what was acknowledged of it', async () => {
    const folder = freshFolder();
    const store = held(await FileStore.open(folder));
    const writer = await store.openBytes('set');
    for (const piece of pieces('one', 'two')) await writer.append(piece);
    store.close();
    appendFileSync(piecesFile(folder, writer.id), frameOf(new Uint8Array(40)).subarray(0, 30));
    const again = held(await FileStore.open(folder));
    expect((await again.bytes(writer.id))?.pieces).toEqual(pieces('one', 'two'));
    expect(await again.problems()).toEqual([{ id: writer.id, code: 'half-written' }]);
    again.close();
  });

  test('with a recording that is damaged names it', async () => {
    const { folder, streamId } = await left();
    const whole = readFileSync(piecesFile(folder, streamId));
    truncateSync(piecesFile(folder, streamId), whole.length - 1);
    const store = held(await FileStore.open(folder));
    expect(await store.problems()).toEqual([{ id: streamId, code: 'piece-missing' }]);
    const altered = Buffer.from(whole);
    altered[30] ^= 1;
    writeFileSync(piecesFile(folder, streamId), altered);
    expect(await store.problems()).toEqual([{ id: streamId, code: 'piece-missing' }]);
    expect((await store.bytes(streamId))?.pieces).toEqual(pieces('rises'));
  });

  test('of a newer version is refused and left alone', async () => {
    const { folder } = await left();
    const newer = Buffer.from(frameOf(new TextEncoder().encode('{"op":"store","version":2}')));
    writeFileSync(log(folder), newer);
    await expect(FileStore.open(folder)).rejects.toMatchObject({ name: 'StorageError', code: 'newer-version' });
    expect(readFileSync(log(folder))).toEqual(newer);
    expect(existsSync(join(folder, 'writer'))).toBe(false);
  });

  test('that is not there is not made for reading, nor where a file stands', async () => {
    const folder = freshFolder();
    await expect(FileStore.open(folder, { readOnly: true })).rejects.toMatchObject({ code: 'no-store' });
    expect(existsSync(folder)).toBe(false);
    // nor is a folder of something else a store without anything in it
    const another = join(folder, '..');
    await expect(FileStore.open(another, { readOnly: true })).rejects.toMatchObject({ code: 'no-store' });
    writeFileSync(folder, 'a file');
    await expect(FileStore.open(folder)).rejects.toMatchObject({ name: 'StorageError' });
    expect(readFileSync(folder, 'utf8')).toBe('a file');
  });

  test('that was let go of says that there is none', async () => {
    const store = await open();
    store.close();
    await expect(store.add(note(1))).rejects.toMatchObject({ code: 'unavailable' });
    await expect(store.documents({})).rejects.toMatchObject({ code: 'unavailable' });
  });
});

describe('of two programs on one folder', () => {
  test('the second reads, sees what the first writes and erases, and is told why it cannot write', async () => {
    const folder = freshFolder();
    const first = held(await FileStore.open(folder));
    const second = held(await FileStore.open(folder));
    expect(second.access).toEqual({ writes: false, why: 'written-elsewhere' });
    const { ada } = await fillStore(first);
    expect(await contentOf(second)).toEqual(await contentOf(first));
    await expect(second.add(note(1))).rejects.toMatchObject({ code: 'written-elsewhere' });
    await first.erase(ada, asked);
    expect(await contentOf(second)).toEqual(await contentOf(first));
    first.close();
    const third = held(await FileStore.open(folder));
    expect(third.access.writes).toBe(true);
    expect(await third.documents({})).toHaveLength(7);
  });

  test('one that was killed holds up nobody, whoever has its number now', async () => {
    const folder = freshFolder();
    (await FileStore.open(folder)).close();
    const { pid } = spawnSync(process.execPath, ['-e', '']);
    const killed = [
      { pid, start: '1', token: 'a' },
      { pid: process.pid, start: '1', token: 'b' },
    ];
    for (const writer of killed) {
      writeFileSync(join(folder, 'writer'), JSON.stringify(writer));
      const store = held(await FileStore.open(folder));
      expect(store.access.writes).toBe(true);
      store.close();
    }
  });
});

test('an erasing that was cut off before the files of recordings were taken away is brought to its end', async () => {
  const { folder, streamId } = await left();
  const file = readFileSync(piecesFile(folder, streamId));
  const store = held(await FileStore.open(folder));
  const [ada] = await store.documents({ kind: 'person' });
  await store.erase(ada.id, asked);
  expect(existsSync(piecesFile(folder, streamId))).toBe(false);
  expect(readFileSync(log(folder)).includes('"Ada"')).toBe(false);
  store.close();
  writeFileSync(piecesFile(folder, streamId), file);
  const again = held(await FileStore.open(folder));
  expect(existsSync(piecesFile(folder, streamId))).toBe(false);
  expect(await again.problems()).toEqual([]);
});
