import { crc32 as zlibCrc32 } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { crc32 } from '../../packages/records/src/crc32.ts';
import { runs } from '../support/runs.ts';

test('the digits 1 to 9 have the check value of this code', () => {
  // Williams (1993), A painless guide to CRC error detection algorithms
  expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
  expect(crc32(new Uint8Array(0))).toBe(0);
});

test('any bytes give what zlib gives', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
      expect(crc32(bytes)).toBe(zlibCrc32(bytes));
    }),
    runs(100, 1000),
  );
});
