import { expect, test } from 'vitest';
import { sizeWords } from '../../../apps/dashboard/src/clinic/size-words.ts';

test.each([
  [0, '0 bytes'],
  [999, '999 bytes'],
  [1000, '1.0 kB'],
  [15_400, '15 kB'],
  [999_400, '999 kB'],
  [999_600, '1.0 MB'],
  [2_345_678, '2.3 MB'],
  [7_200_000_000, '7.2 GB'],
  [7_200_000_000_000, '7200 GB'],
])('%s bytes are %s', (bytes, words) => {
  expect(sizeWords(bytes)).toBe(words);
});
