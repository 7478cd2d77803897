import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { fileLog } from '../../apps/cli/src/log.ts';

const folder = mkdtempSync(join(tmpdir(), 'surae-log-'));
afterAll(() => rmSync(folder, { recursive: true }));

test('what is added is read again, and stands behind what was there before', () => {
  const path = join(folder, 'a.journal');
  for (const text of ['first', 'second']) {
    const log = fileLog(path);
    const from = log.length;
    log.add(Buffer.from(text));
    expect(log.read(from, text.length).toString()).toBe(text);
    expect(log.length).toBe(from + text.length);
    log.close();
  }
  expect(readFileSync(path, 'utf8')).toBe('firstsecond');
});

test('what is beyond the end is not read', () => {
  const log = fileLog(join(folder, 'b.journal'));
  log.add(Buffer.from('abc'));
  expect(log.read(1, 10).toString()).toBe('bc');
  log.close();
});

test.skipIf(process.platform === 'win32')('one without a name leaves nothing on the disk, however the run ends', () => {
  const mine = () => readdirSync(tmpdir()).filter((name) => /^surae-[A-Za-z0-9]{6}$/.test(name));
  const before = mine();
  const log = fileLog(undefined);
  log.add(Buffer.from('x'.repeat(1000)));
  expect(log.read(0, 1000)).toHaveLength(1000);
  expect(mine().filter((name) => !before.includes(name) && existsSync(join(tmpdir(), name, 'results')))).toEqual([]);
  log.close();
});
