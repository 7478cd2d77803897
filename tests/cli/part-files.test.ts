import { expect, test } from 'vitest';
import { PartFiles } from '../../apps/cli/src/part-files.ts';
import { MemoryIo } from '../support/memory-io.ts';

test('a file has its name when it is whole, and another content never stood under it', () => {
  const memory = new MemoryIo();
  memory.files.set('out/a.csv', 'old');
  const files = new PartFiles('out', ['a.csv', 'b.csv'], true, memory.io);
  const [a, b] = ['a.csv', 'b.csv'].map((name) => files.begin(name));
  a.write('new ');
  b.write('gone');
  a.write('text');
  expect(memory.text('out/a.csv')).toBe('old');
  files.place((name) => name === 'a.csv');
  expect(Object.fromEntries(memory.files)).toEqual({ 'out/a.csv': 'new text' });
});

test('a name that is taken and a folder that cannot be written are mistakes of the command line', () => {
  const memory = new MemoryIo();
  memory.files.set('out/a.csv', 'old');
  expect(() => new PartFiles('out', ['a.csv'], false, memory.io)).toThrow('out/a.csv is there already');
  const full = {
    ...memory.io,
    openFile: () => ({
      write: () => {
        throw new Error('the disk is full');
      },
      close: () => undefined,
    }),
  };
  const files = new PartFiles('other', ['a.csv'], false, full);
  expect(() => files.begin('a.csv').write('x')).toThrow('other cannot be written: the disk is full');
});
