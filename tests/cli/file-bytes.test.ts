import { closeSync, mkdtempSync, openSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { FileBytes } from '../../apps/cli/src/file-bytes.ts';

const folder = mkdtempSync(join(tmpdir(), 'surae-bytes-'));
const files: number[] = [];
afterAll(() => {
  for (const file of files) closeSync(file);
  rmSync(folder, { recursive: true });
});

function opened(content: string): number {
  const path = join(folder, `${files.length}`);
  writeFileSync(path, content);
  const file = openSync(path, 'r');
  files.push(file);
  return file;
}

test('the check sum is of what was read in turn, whatever was looked at and however it was cut', () => {
  const seen: string[] = [];
  const bytes = new FileBytes(opened('123456789'), (next) => void seen.push(Buffer.from(next).toString()));
  bytes.look(new Uint8Array(5), 2);
  expect(bytes.next(new Uint8Array(4), 0)).toBe(4);
  expect(bytes.pass(4, 9)).toBe(true);
  // the check value of CRC-32 (ISO 3309): Williams (1993), A painless guide to CRC error detection algorithms
  expect(bytes.checkSum).toBe(0xcbf43926);
  expect(seen.join('')).toBe('123456789');
});

test('a room that is larger than what is left is filled as far as that goes', () => {
  const into = new Uint8Array(9);
  expect(new FileBytes(opened('123456')).look(into, 4)).toBe(2);
  expect([...into]).toEqual([53, 54, 0, 0, 0, 0, 0, 0, 0]);
});

test('an end that comes early and a NUL are told', () => {
  expect(new FileBytes(opened('12345')).pass(0, 6)).toBe(false);
  const broken = new FileBytes(opened('12\0'));
  expect(broken.look(new Uint8Array(3), 0)).toBe(0);
  expect(broken.pass(0, 2)).toBe(true);
  expect(broken.pass(2, 3)).toBe(false);
});
