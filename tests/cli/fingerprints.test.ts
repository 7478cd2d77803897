import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { sha256 } from '../../apps/cli/src/fingerprints.ts';

test('SHA-256 of "abc" is that of FIPS 180-4, example B.1', () => {
  expect(sha256('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  expect(sha256(new Uint8Array([97, 98, 99]))).toBe(createHash('sha256').update('abc').digest('hex'));
});
