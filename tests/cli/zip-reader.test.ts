import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { zipped } from '@surae/exchange';
import { afterAll, expect, test } from 'vitest';
import { nodeFiles } from '../../apps/cli/src/node-files.ts';
import { readFault } from '../../apps/cli/src/read-fault.ts';
import { isZip, zipPlace } from '../../apps/cli/src/zip-path.ts';

const folder = mkdtempSync(join(tmpdir(), 'surae-zip-'));
afterAll(() => rmSync(folder, { recursive: true }));

const bytes = (text: string) => new TextEncoder().encode(text);
const LONG = 'time [s],force [N]\n'.repeat(30_000);

function written(name: string, change: (zip: Uint8Array) => void = () => undefined): string {
  const zip = zipped([
    { name: 'left/1.csv', bytes: bytes(LONG) },
    { name: 'é.csv', bytes: bytes('short') },
  ]);
  change(zip);
  const path = join(folder, name);
  writeFileSync(path, zip);
  return path;
}

/** Where the list of files of a zip begins for one of them. */
function listedAt(zip: Uint8Array, name: string): number {
  const at = Buffer.from(zip).lastIndexOf(name);
  return at - 46;
}

test('files of a zip are read where they lie, whole or a piece at a time, one of a folder named so too', async () => {
  const path = written('a.zip');
  const { readFile, readChunks, zipNames } = nodeFiles();
  expect([...(await zipNames(path))].sort()).toEqual(['left/1.csv', 'é.csv']);
  expect(Buffer.from(await readFile(`${path}/é.csv`)).toString()).toBe('short');
  expect(Buffer.from(await readFile(`${path}/left/1.csv`)).toString()).toBe(LONG);
  const pieces: Uint8Array[] = [];
  for await (const piece of readChunks(`${path}/left/1.csv`)) pieces.push(piece);
  expect(pieces.length).toBeGreaterThan(1);
  expect(Buffer.concat(pieces).toString()).toBe(LONG);
  const other = written('b.zip');
  const all = await Promise.all([
    readFile(`${path}/left/1.csv`),
    readFile(`${other}/é.csv`),
    readFile(`${path}/é.csv`),
  ]);
  expect(all.map((one) => one.length)).toEqual([LONG.length, 5, 5]);
});

test.each([
  ['the name of no file', 'gone.csv', () => undefined, 'there is no such file in the zip'],
  [
    'a password',
    'é.csv',
    (zip: Uint8Array) => {
      zip[listedAt(zip, 'é.csv') + 8] |= 1;
    },
    'this file is locked by a password',
  ],
  [
    'another check sum',
    'é.csv',
    (zip: Uint8Array) => {
      zip[listedAt(zip, 'é.csv') + 16] ^= 1;
    },
    'this file of the zip is damaged: its check sum is another',
  ],
  [
    'bytes that are no packed text',
    'left/1.csv',
    (zip: Uint8Array) => {
      zip.fill(255, 60, 90);
    },
    'this file of the zip is damaged: ',
  ],
])('%s is said in words', async (what, name, change, words) => {
  const path = written(`${what}.zip`, change);
  const error: unknown = await nodeFiles()
    .readFile(`${path}/${name}`)
    .catch((fault: unknown) => fault);
  expect(readFault(error)).toContain(words);
});

test('what is no zip, and a zip that is cut off, cannot be opened', async () => {
  const path = join(folder, 'no.zip');
  writeFileSync(path, 'time [s],force [N]\n');
  const names = (at: string) => nodeFiles().zipNames(at).catch(readFault);
  expect(await names(path)).toContain('this zip cannot be opened');
  expect(await names(join(folder, 'gone.zip'))).toBe('there is no such file');
  writeFileSync(path, zipped([{ name: 'a.csv', bytes: bytes('x') }]).subarray(0, 30));
  expect(await names(path)).toContain('this zip cannot be opened');
});

test('where a path leads into a zip is seen from its spelling', () => {
  expect(zipPlace('a/b.ZIP/c/d.csv')).toEqual({ zip: 'a/b.ZIP', entry: 'c/d.csv' });
  expect(zipPlace('a.zip/b.zip/c.csv')).toEqual({ zip: 'a.zip', entry: 'b.zip/c.csv' });
  expect([zipPlace('a/b.csv'), zipPlace('a.zip'), zipPlace('a.zip/')]).toEqual([undefined, undefined, undefined]);
  expect([isZip('a.zip'), isZip('a.zip.csv')]).toEqual([true, false]);
});
