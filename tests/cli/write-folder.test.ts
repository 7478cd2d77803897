import { join } from 'node:path';
import { expect, test } from 'vitest';
import { UsageError } from '../../apps/cli/src/usage-error.ts';
import { WriteFolder } from '../../apps/cli/src/write-folder.ts';
import { MemoryIo } from '../support/memory-io.ts';

test('the folder is made, and files go into it by name', () => {
  const memory = new MemoryIo();
  new WriteFolder('out', ['a.csv'], false, memory.io).write('a.csv', 'text');
  expect([...memory.folders]).toEqual(['out']);
  expect(memory.text(join('out', 'a.csv'))).toBe('text');
});

test('one file that is there keeps all of them from being written, unless replacing was asked for', () => {
  const memory = new MemoryIo();
  memory.files.set(join('out', 'b.csv'), 'old');
  expect(() => new WriteFolder('out', ['a.csv', 'b.csv'], false, memory.io)).toThrow(
    new UsageError(`${join('out', 'b.csv')} is there already: name another folder, or add --replace`),
  );
  expect(memory.folders.size).toBe(0);
  new WriteFolder('out', ['a.csv', 'b.csv'], true, memory.io).write('b.csv', 'new');
  expect(memory.text(join('out', 'b.csv'))).toBe('new');
});

test('a folder or a file that cannot be written is a fault of the command line, with its reason', () => {
  const deny = (): never => {
    throw new Error('read-only');
  };
  const { io } = new MemoryIo();
  expect(() => new WriteFolder('out', [], false, { ...io, makeFolder: deny })).toThrow(
    new UsageError('out cannot be written: read-only'),
  );
  const folder = new WriteFolder('out', ['a.csv'], false, { ...io, writeFile: deny });
  expect(() => folder.write('a.csv', '')).toThrow(UsageError);
});
