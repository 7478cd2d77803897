import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { nodeIo } from '../../apps/cli/src/node-io.ts';

let folder = '';
const before = process.stdout.listeners('error');

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'surae-io-'));
});

afterEach(() => {
  rmSync(folder, { recursive: true });
  for (const listener of process.stdout.listeners('error')) {
    if (!before.includes(listener)) process.stdout.off('error', listener as () => void);
  }
  vi.unstubAllEnvs();
});

test('what is written is there, folders within folders are made, and the bytes come back as they were', async () => {
  const io = nodeIo();
  const inside = join(folder, 'a', 'b');
  io.makeFolder(inside);
  io.makeFolder(inside);
  const path = join(inside, 'x.csv');
  expect(io.exists(path)).toBe(false);
  io.writeFile(path, 'µ\r\n');
  expect(io.exists(path)).toBe(true);
  expect([...(await io.readFile(path))]).toEqual([0xc2, 0xb5, 0x0d, 0x0a]);
});

test('bytes are written as they are; the day is one of the calendar, and no secret comes twice', async () => {
  const io = nodeIo();
  const path = join(folder, 'x.zip');
  io.writeFile(path, Uint8Array.of(0, 255, 10));
  expect([...(await io.readFile(path))]).toEqual([0, 255, 10]);
  expect(io.today()).toMatch(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/);
  expect(io.drawSecret()).toMatch(/^[0-9a-f]{64}$/);
  expect(io.drawSecret()).not.toBe(io.drawSecret());
});

test('a missing file is an error with its code, not empty bytes', async () => {
  await expect(nodeIo().readFile(join(folder, 'gone'))).rejects.toMatchObject({ code: 'ENOENT' });
});

test.each([
  ['de_DE.UTF-8', true],
  ['en_GB.utf8', true],
  ['C', false],
  ['POSIX', false],
  ['en_GB.ISO-8859-1', false],
  ['', false],
])('under the locale "%s" blocks are drawn: %s', (locale, draws) => {
  vi.stubEnv('LC_ALL', '');
  vi.stubEnv('LC_CTYPE', locale);
  vi.stubEnv('LANG', '');
  expect(nodeIo().drawsBlocks).toBe(draws || process.platform === 'darwin');
  vi.stubEnv('LC_ALL', 'C');
  expect(nodeIo().drawsBlocks).toBe(process.platform === 'darwin');
});

test('a line is never narrower than 60 nor wider than 100 characters', () => {
  const { columns } = process.stdout;
  const widthFor = (wide: number | undefined): number => {
    Object.assign(process.stdout, { columns: wide });
    return nodeIo().width;
  };
  expect([undefined, 20, 72, 300].map(widthFor)).toEqual([80, 60, 72, 100]);
  Object.assign(process.stdout, { columns });
});
