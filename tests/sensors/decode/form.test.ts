import { expect, test } from 'vitest';
import { formParts, integerRange } from '../../../packages/sensors/src/decode/form.ts';

test('a form is a letter and its bits', () => {
  expect(formParts('u8')).toEqual({ kind: 'unsigned', bits: 8 });
  expect(formParts('i24')).toEqual({ kind: 'signed', bits: 24 });
  expect(formParts('f32')).toEqual({ kind: 'float', bits: 32 });
});

test('what a double cannot hold exactly is no form, nor is anything else', () => {
  expect(formParts('u53')).toBeDefined();
  for (const form of ['u54', 'u64', 'i0', 'u0', 'f8', 'f24', 'u', 'U8', 'u8 ', 'u08', '']) {
    expect([form, formParts(form)]).toEqual([form, undefined]);
  }
});

test('the range of an integer', () => {
  expect(integerRange({ kind: 'unsigned', bits: 8 })).toEqual({ least: 0, greatest: 255 });
  expect(integerRange({ kind: 'signed', bits: 8 })).toEqual({ least: -128, greatest: 127 });
  expect(integerRange({ kind: 'signed', bits: 53 })).toEqual({ least: -(2 ** 52), greatest: 2 ** 52 - 1 });
});
