import { expect, test } from 'vitest';
import { wholeBytes } from '../../../apps/dashboard/src/result/whole-bytes.ts';

test('pieces stand one after the other; a stream without any is empty', () => {
  const pieces = [Uint8Array.of(1, 2), new Uint8Array(0), Uint8Array.of(3)];
  expect([...wholeBytes({ pieces })]).toEqual([1, 2, 3]);
  expect(wholeBytes({ pieces: [] })).toHaveLength(0);
});
