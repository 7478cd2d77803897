import { expect, test } from 'vitest';
import { textOf, utf8 } from '../../packages/exchange/src/utf8.ts';

test('text comes back, byte order mark included; other bytes are refused', () => {
  expect(textOf(utf8('\uFEFFZoë'), 'x')).toBe('\uFEFFZoë');
  expect(() => textOf(Uint8Array.of(0xff, 0x41), 'x.csv')).toThrow('x.csv: expected text in UTF-8, got other bytes');
});
