import { parseArgs } from 'node:util';
import { expect, test } from 'vitest';
import { parsed, unknownWord } from '../../apps/cli/src/parsed-options.ts';
import { UsageError } from '../../apps/cli/src/usage-error.ts';

test('an error of the parser is one sentence of ours, a result passes through', () => {
  expect(() => parsed(() => parseArgs({ args: ['--no'], options: {} }))).toThrow(UsageError);
  expect(() => parsed(() => parseArgs({ args: ['--no'], options: {} }))).toThrow(/^Unknown option '--no'$/);
  expect(parsed(() => 3)).toBe(3);
});

test('an unknown word is told with those that are known', () => {
  expect(unknownWord('--side', 'up', ['left', 'right']).message).toBe('--side up: expected left, right');
});
