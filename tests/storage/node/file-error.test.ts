import { StorageError } from '@surae/storage';
import { expect, test } from 'vitest';
import { fileError, isMissing } from '../../../packages/storage/src/node/file-error.ts';

test.each([
  ['ENOSPC', 'full'],
  ['EDQUOT', 'full'],
  ['EACCES', 'unavailable'],
  ['EROFS', 'unavailable'],
  ['EBADF', 'unavailable'],
  ['EIO', 'failed'],
])('%s of a file system becomes %s', (code, ours) => {
  const cause = Object.assign(new Error('why'), { code });
  expect(fileError(cause)).toMatchObject({ name: 'StorageError', code: ours, cause });
});

test('one of ours stays what it is, anything else has failed, and what is missing is told', () => {
  const own = new StorageError('altered', 'x');
  expect(fileError(own)).toBe(own);
  expect(fileError('a text')).toMatchObject({ code: 'failed', message: 'The store failed: a text' });
  expect(isMissing(Object.assign(new Error('x'), { code: 'ENOENT' }))).toBe(true);
  expect(isMissing(null)).toBe(false);
});
