import { expect, test } from 'vitest';
import { sameBytes } from '../../packages/storage/src/same-bytes.ts';

test.each([
  [Uint8Array.of(1, 2), Uint8Array.of(1, 2), true],
  [Uint8Array.of(1, 2), Uint8Array.of(1, 3), false],
  [Uint8Array.of(1, 2), Uint8Array.of(1), false],
  [Uint8Array.of(1), Uint8Array.of(1, 2), false],
  [new Uint8Array(0), new Uint8Array(0), true],
  [undefined, undefined, true],
  [new Uint8Array(0), undefined, false],
  [undefined, new Uint8Array(0), false],
  ['1', Uint8Array.of(1), false],
  [null, undefined, false],
])('%j and %j: %s', (a, b, same) => {
  expect(sameBytes(a, b)).toBe(same);
});
