import { InputError } from '@surae/analysis';
import { expect, test } from 'vitest';

test('an input error says which argument, what was expected and what came', () => {
  const error = new InputError('too-short', { argument: 'force', expected: 'n >= 3', actual: 'n = 1' });
  expect(error.message).toBe('force: expected n >= 3, got n = 1');
});
