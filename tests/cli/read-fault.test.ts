import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readFault } from '../../apps/cli/src/read-fault.ts';

let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'surae-read-'));
  writeFileSync(join(folder, 'file.csv'), '');
});

afterAll(() => rmSync(folder, { recursive: true }));

const faultOf = async (...path: string[]): Promise<string> => {
  try {
    await readFile(join(folder, ...path));
  } catch (error) {
    return readFault(error);
  }
  return 'was read';
};

test('faults that the system really gives are told in words', async () => {
  expect(await faultOf('gone.csv')).toBe('there is no such file');
  expect(await faultOf('file.csv', 'inside.csv')).toBe('there is no such file');
  expect(await faultOf()).toBe('this is a folder; name the files in it');
});

test('a fault without words of ours keeps those of the system', () => {
  expect(readFault(Object.assign(new Error('EMFILE: too many'), { code: 'EMFILE' }))).toBe('EMFILE: too many');
  expect(readFault('odd')).toBe('odd');
});
