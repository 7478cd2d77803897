import { StorageError } from '../errors.ts';

/** A failure of the file system as ours. */
export function fileError(error: unknown): StorageError {
  if (error instanceof StorageError) return error;
  const { code, message } = (error ?? {}) as { code?: unknown; message?: unknown };
  const cause = { cause: error };
  if (code === 'ENOSPC' || code === 'EDQUOT') return new StorageError('full', 'The disk has no more room.', cause);
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS' || code === 'ENOTDIR' || code === 'EBADF') {
    return new StorageError('unavailable', 'The folder of the store cannot be used.', cause);
  }
  return new StorageError(
    'failed',
    `The store failed: ${typeof message === 'string' ? message : String(error)}`,
    cause,
  );
}

/** Whether something is not there. */
export function isMissing(error: unknown): boolean {
  return (error as { code?: unknown } | null)?.code === 'ENOENT';
}
