import { STORE_ERRORS } from '@surae/shared';
import { StorageError } from '@surae/storage';

/** Why something could not be stored, and what to do about it. */
export function storeWords(error: unknown): string {
  return STORE_ERRORS[error instanceof StorageError ? error.code : 'failed'].text;
}
