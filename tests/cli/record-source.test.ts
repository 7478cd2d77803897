import { appendFileSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { MemoryStore, type RecordStore } from '@surae/storage';
import { FileStore, fileVault } from '@surae/storage/node';
import { beforeAll, expect, test } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { openRecord } from '../../apps/cli/src/record-source.ts';
import { frameOf } from '../../packages/storage/src/node/frames.ts';
import { cheapCost, passphrase } from '../support/cheap-vault.ts';
import { MemoryIo } from '../support/memory-io.ts';
import { freshFolder, removeFolders } from '../support/store-folder.ts';
import { tellVisits } from '../support/told-visit.ts';

removeFolders();
const memory = new MemoryIo();

function tell(store: RecordStore): Promise<unknown> {
  return tellVisits(store, { name: 'Ottilie Marsh', bodyMassKg: 60, heelLeverM: 0.15 }, [
    { day: '2026-03-01', left: { count: 20 }, right: { count: 15 } },
  ]);
}

async function backupOf(store: RecordStore): Promise<Uint8Array> {
  const pieces: Uint8Array[] = [];
  for await (const piece of store.backup()) pieces.push(piece);
  return new Uint8Array(Buffer.concat(pieces));
}

/** A folder with a store that was let go of; the recovery code of one that is encrypted. */
async function storeFolder(): Promise<string> {
  const folder = freshFolder();
  const store = await FileStore.open(folder);
  await tell(store);
  store.close();
  return folder;
}

const sealed = { folder: '', code: '' };

beforeAll(async () => {
  const store = new MemoryStore();
  await tell(store);
  const whole = await backupOf(store);
  memory.files.set('whole', whole);
  memory.files.set('cut', whole.slice(0, Math.floor(whole.length * 0.7)));
  memory.files.set('pass.txt', `${passphrase}\n`);
  memory.files.set('other.txt', 'another passphrase of some length');
  sealed.folder = freshFolder();
  const vault = await fileVault(sealed.folder, { cost: cheapCost });
  const { store: inside, recoveryCode } = await vault.create(passphrase);
  await tell(inside);
  memory.files.set('sealed', await backupOf(inside));
  sealed.code = recoveryCode;
  vault.close();
});

/** What lies in a folder, without the mark of who writes, which goes by itself. */
function filesIn(folder: string): (readonly [string, string])[] {
  const files = readdirSync(folder, { withFileTypes: true }).filter((one) => one.isFile() && one.name !== 'writer');
  return files.map(({ name }) => [name, readFileSync(join(folder, name), 'hex')]);
}

/** What the command answers to an export of such a source. */
async function exported(...source: readonly string[]): Promise<{ code: number; error: string; io: MemoryIo }> {
  const io = new MemoryIo();
  for (const [name, content] of memory.files) io.files.set(name, content);
  const code = await main(['export', ...source, '--out', 'o.zip'], io.io);
  return { code, error: io.error, io };
}

/** The words in which such a source is refused. */
async function refusalOf(...source: readonly string[]): Promise<string> {
  const { code, error, io } = await exported(...source);
  expect([code, io.files.has('o.zip')]).toEqual([2, false]);
  return error;
}

test('a backup gives the record as it stands', async () => {
  const { study } = await openRecord({ kind: 'backup', path: 'whole', passphraseFile: undefined }, memory.io);
  expect(study.people).toMatchObject([{ name: 'Ottilie Marsh', bodyMassKg: 60 }]);
  expect(study.trials.map(({ side, status }) => `${side} ${status}`)).toEqual(['left assessed', 'right assessed']);
});

test('a backup that is cut off, and one that is none, are refused', async () => {
  expect(await refusalOf('--backup', 'cut')).toMatch(/cut: .*not whole\n/);
  memory.files.set('none', 'no backup');
  expect(await refusalOf('--backup', 'none')).toMatch('none: A backup');
});

test('a folder gives the bytes that a backup of it gives, and stays as it was', async () => {
  const folder = await storeFolder();
  const before = filesIn(folder);
  const { code, io } = await exported('--store', folder);
  expect([code, io.error]).toEqual([0, '']);
  const store = await FileStore.open(folder, { readOnly: true });
  io.files.set('b', await backupOf(store));
  store.close();
  expect(await main(['export', '--backup', 'b', '--out', 'b.zip'], io.io)).toBe(0);
  expect(Buffer.compare(io.files.get('o.zip') as Uint8Array, io.files.get('b.zip') as Uint8Array)).toBe(0);
  expect(filesIn(folder)).toEqual(before);
});

test('an encrypted store or backup opens by a file, by the recovery code, or by what is typed', async () => {
  for (const source of [
    ['--store', sealed.folder],
    ['--backup', 'sealed'],
  ]) {
    expect(await exported(...source, '--passphrase-file', 'pass.txt')).toMatchObject({ code: 0, error: '' });
    memory.files.set('code.txt', sealed.code);
    expect((await exported(...source, '--passphrase-file', 'code.txt')).code).toBe(0);
    const io = new MemoryIo();
    io.files.set('sealed', memory.files.get('sealed')!);
    io.typed = passphrase;
    expect(await main(['export', ...source, '--out', 'o.zip'], io.io)).toBe(0);
    expect(io.asked).toEqual([`Passphrase or recovery code of ${source[1]}: `]);
    expect(io.out + io.error).not.toContain(passphrase);
  }
});

test('another passphrase is refused, and so is none where nobody can type; nothing is written', async () => {
  for (const source of [
    ['--store', sealed.folder],
    ['--backup', 'sealed'],
  ]) {
    const wrong = await exported(...source, '--passphrase-file', 'other.txt');
    expect([wrong.code, wrong.error]).toEqual([2, expect.stringContaining('Neither the passphrase nor the recovery')]);
    expect(wrong.io.files.has('o.zip')).toBe(false);
    const none = await exported(...source);
    expect([none.code, none.error]).toEqual([2, expect.stringContaining('is encrypted: name a file')]);
  }
});

test('no store, another folder, and a store of a newer version are refused', async () => {
  const missing = freshFolder();
  expect(await refusalOf('--store', missing)).toMatch('There is no store in');
  mkdirSync(missing);
  writeFileSync(join(missing, 'letter.txt'), 'x');
  expect(await refusalOf('--store', missing)).toMatch('There is no store in');
  const newer = await storeFolder();
  const entry = frameOf(new TextEncoder().encode('{"op":"store","version":99}'));
  writeFileSync(join(newer, 'records.log'), Buffer.concat([entry, readFileSync(join(newer, 'records.log'))]));
  expect(await refusalOf('--store', newer)).toMatch('newer version of this software');
});

test('an entry that was cut off while it was written is told, and what is whole leaves', async () => {
  const folder = await storeFolder();
  const next = frameOf(new TextEncoder().encode('{"op":"documents","rows":[]}'));
  appendFileSync(join(folder, 'records.log'), next.subarray(0, 9));
  const { code, error, io } = await exported('--store', folder);
  expect(code).toBe(1);
  expect(error).toBe(
    `Refused, 1:\n  ${folder}, records.log: expected a whole entry, got one that was cut off while it was written; it was never acknowledged\n`,
  );
  expect(io.out).toContain('1 people, 1 visits, 2 trials');
});

test('a document that was altered is named and left out, and what is whole leaves', async () => {
  const folder = await storeFolder();
  const log = join(folder, 'records.log');
  const bytes = readFileSync(log);
  const at = bytes.indexOf('"liveCount":20');
  bytes[at + 12] ^= 1;
  writeFileSync(log, bytes);
  const { code, error } = await exported('--store', folder);
  expect([code, error]).toEqual([1, expect.stringContaining('altered since; it is left out')]);
});
