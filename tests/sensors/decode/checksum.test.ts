import { type ChecksumKind, checksum, checksumBytes } from '@surae/sensors';
import { expect, test } from 'vitest';

// Python 3.11: zlib.crc32(b'123456789'), binascii.crc_hqx(b'123456789', 0xffff) and (..., 0); the first two by hand
const known: [ChecksumKind, number][] = [
  ['sum8', 0xdd],
  ['xor8', 0x31],
  ['crc16-ccitt', 0x29b1],
  ['crc16-xmodem', 0x31c3],
  ['crc32', 0xcbf43926],
];

test.each(known)('%s of the digits 1 to 9', (kind, expected) => {
  const digits = Uint8Array.from('123456789', (digit) => digit.charCodeAt(0));
  expect(checksum(kind, digits)).toBe(expected);
  // any single altered bit is seen
  for (let bit = 0; bit < 8 * digits.length; bit += 1) {
    const altered = digits.slice();
    altered[bit >> 3] ^= 1 << (bit & 7);
    expect(checksum(kind, altered)).not.toBe(expected);
  }
  expect(checksum(kind, digits)).toBeLessThan(2 ** (8 * checksumBytes[kind]));
});

test('of nothing', () => {
  expect(known.map(([kind]) => checksum(kind, new Uint8Array(0)))).toEqual([0, 0, 0xffff, 0, 0]);
});
