import { expect, test } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { UsageError } from '../../apps/cli/src/usage-error.ts';
import { MemoryIo } from '../support/memory-io.ts';

test('it carries its name and its sentence, and the command turns it into exit code 2', async () => {
  const error = new UsageError('no such thing');
  expect([error.name, error.message, error instanceof Error]).toEqual(['UsageError', 'no such thing', true]);
  const memory = new MemoryIo();
  memory.files.set('a.json', '[]');
  expect(await main(['assess', 'x.csv', '--settings', 'a.json'], memory.io)).toBe(2);
});

test('an error that is none of the command line is not hidden behind exit code 2', async () => {
  const io = {
    ...new MemoryIo().io,
    writeOut: () => {
      throw new TypeError('broken');
    },
  };
  await expect(main(['--help'], io)).rejects.toThrow(TypeError);
});
