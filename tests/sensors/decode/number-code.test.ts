import { expect, test } from 'vitest';
import type { FormParts } from '../../../packages/sensors/src/decode/form.ts';
import { readNumber, writeNumber } from '../../../packages/sensors/src/decode/number-code.ts';

const form = (kind: FormParts['kind'], bits: number): FormParts => ({ kind, bits });

test("two's complement of any width", () => {
  expect(readNumber(Uint8Array.of(0xff), 0, form('signed', 8), 'little')).toBe(-1);
  expect(readNumber(Uint8Array.of(0x00, 0x00, 0x80), 0, form('signed', 24), 'little')).toBe(-8_388_608);
  expect(readNumber(Uint8Array.of(0xff, 0xff, 0xfe), 0, form('signed', 24), 'big')).toBe(-2);
  expect(readNumber(Uint8Array.of(0x0f), 0, form('signed', 4), 'little')).toBe(-1);
  expect(readNumber(Uint8Array.of(0x7f), 0, form('signed', 8), 'little')).toBe(127);
});

// the platform's own reader of numbers is the yardstick
test.each(['little', 'big'] as const)('numbers are those of the platform: %s', (order) => {
  const bytes = Uint8Array.of(0x3f, 0xc9, 0x99, 0x1a, 0x41, 0x07, 0xd3, 0xbf);
  const view = new DataView(bytes.buffer);
  const little = order === 'little';
  expect(readNumber(bytes, 0, form('float', 32), order)).toBe(view.getFloat32(0, little));
  expect(readNumber(bytes, 0, form('float', 64), order)).toBe(view.getFloat64(0, little));
  expect(readNumber(bytes, 16, form('signed', 16), order)).toBe(view.getInt16(2, little));
  expect(readNumber(bytes, 16, form('signed', 32), order)).toBe(view.getInt32(2, little));
});

test.each(['little', 'big'] as const)('what is written is read, also between bytes: %s', (order) => {
  for (const [parts, value] of [
    [form('float', 16), -1.5],
    [form('float', 32), Math.fround(9.81)],
    [form('float', 64), -Math.PI],
    [form('signed', 13), -4096],
    [form('signed', 48), -123_456_789_012],
    [form('unsigned', 40), 2 ** 40 - 1],
  ] as const) {
    for (const atBit of [0, 3, 8]) {
      const bytes = new Uint8Array(12);
      writeNumber(bytes, atBit, parts, order, value);
      expect(readNumber(bytes, atBit, parts, order)).toBe(value);
    }
  }
});
