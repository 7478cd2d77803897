import { bytesOfHex, hexOf } from '@surae/sensors';
import { expect, test } from 'vitest';

test('bytes in hexadecimal, with blanks or without', () => {
  expect([...bytesOfHex('A5 5a0F')!]).toEqual([0xa5, 0x5a, 0x0f]);
  expect(hexOf(Uint8Array.of(0xa5, 0x0f, 0))).toBe('A5 0F 00');
  for (const text of ['', 'A', 'A5 5', '0xA5', 'A5  5A', 'G0', ' A5'])
    expect([text, bytesOfHex(text)]).toEqual([text, undefined]);
});
