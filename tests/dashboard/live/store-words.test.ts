import { STORE_ERRORS } from '@surae/shared';
import { StorageError, type StorageErrorCode } from '@surae/storage';
import { expect, test } from 'vitest';
import { storeWords } from '../../../apps/dashboard/src/live/store-words.ts';

test('each reason has a sentence of its own, without the words of the error', () => {
  const codes = Object.keys(STORE_ERRORS) as StorageErrorCode[];
  const said = codes.map((code) => storeWords(new StorageError(code, 'QuotaExceededError 0x80')));
  expect(said).toEqual(codes.map((code) => STORE_ERRORS[code].text));
  expect(new Set(said).size).toBe(codes.length);
  for (const text of said) expect(text).toMatch(/^[A-Z].+\.$/);
});

test('whatever else went wrong was not written', () => {
  expect(storeWords(new TypeError('x'))).toBe(STORE_ERRORS.failed.text);
  expect(storeWords('x')).toBe(STORE_ERRORS.failed.text);
});
