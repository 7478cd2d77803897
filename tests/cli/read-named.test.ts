import { expect, test } from 'vitest';
import { readNamed } from '../../apps/cli/src/read-named.ts';
import { MemoryIo } from '../support/memory-io.ts';

test('the bytes of a file; one that is not there is a matter of the command line', async () => {
  const memory = new MemoryIo();
  memory.files.set('a.json', '{}');
  expect(new TextDecoder().decode(await readNamed('a.json', memory.io))).toBe('{}');
  await expect(readNamed('gone.json', memory.io)).rejects.toThrow('gone.json cannot be read: there is no such file');
});
