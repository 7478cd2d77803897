import { expect, test } from 'vitest';
import { textOf } from '../../../packages/sensors/src/decode/text.ts';

test('text is UTF-8 up to the first zero', () => {
  expect(textOf(Uint8Array.of(0x4d, 0xc3, 0xbc, 0x00, 0x41))).toBe('Mü');
  expect(textOf(Uint8Array.of())).toBe('');
  expect(textOf(Uint8Array.of(0x41, 0xff))).toBe('A\ufffd');
});
