import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { sha256Hex } from '../../packages/records/src/hash.ts';

test('SHA-256 of "abc" is the published one', () => {
  // Source: NIST FIPS 180-2, appendix B.1.
  const published = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
  expect(sha256Hex(new TextEncoder().encode('abc'))).toBe(published);
});

test('agrees with the hash of Node on bytes of any value and length', () => {
  for (let length = 0; length < 200; length += 7) {
    const bytes = Uint8Array.from({ length }, (_, index) => (index * 31 + length) % 256);
    expect(sha256Hex(bytes)).toBe(createHash('sha256').update(bytes).digest('hex'));
  }
});
