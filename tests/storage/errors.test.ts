import { StorageError } from '@surae/storage';
import { expect, test } from 'vitest';

test('an error of a store carries a code, what it says and what caused it', () => {
  const cause = new Error('the disk is full');
  const error = new StorageError('full', 'The browser gives no more room.', { cause });
  expect(error).toMatchObject({
    name: 'StorageError',
    code: 'full',
    message: 'The browser gives no more room.',
    cause,
  });
});
