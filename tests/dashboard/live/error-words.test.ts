import { expect, test } from 'vitest';
import { errorWords } from '../../../apps/dashboard/src/live/error-words.ts';

test('an error says its message, and anything else that was thrown says itself', () => {
  expect([new RangeError('too far'), 'a word', 7, undefined].map(errorWords)).toEqual([
    'too far',
    'a word',
    '7',
    'undefined',
  ]);
});
