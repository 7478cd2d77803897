import fc from 'fast-check';
import { expect, test } from 'vitest';
import { halfToNumber, numberToHalf } from '../../../packages/sensors/src/decode/float16.ts';
import { runs } from '../../support/runs.ts';

// by hand from IEEE 754 binary16: sign, five bits of exponent with bias 15, ten bits of fraction
const known: [number, number][] = [
  [0x0000, 0],
  [0x8000, -0],
  [0x3c00, 1],
  [0xc000, -2],
  [0x7bff, 65504],
  [0x0400, 2 ** -14],
  [0x03ff, 1023 * 2 ** -24],
  [0x0001, 2 ** -24],
  [0x3555, 0.333251953125],
  [0x7c00, Infinity],
  [0xfc00, -Infinity],
];

test.each(known)('0x%s holds %s', (code, value) => {
  expect(halfToNumber(code)).toBe(value);
  expect(numberToHalf(value)).toBe(code);
});

test('NaN stays NaN', () => {
  expect(halfToNumber(0x7e00)).toBeNaN();
  expect(halfToNumber(0xfc01)).toBeNaN();
  expect(numberToHalf(NaN)).toBe(0x7e00);
});

test('every code that is a number comes back', () => {
  const codes = Array.from({ length: 65536 }, (_, code) => code).filter((code) => !Number.isNaN(halfToNumber(code)));
  // two signs, 31 exponents with 1024 fractions each, and infinity
  expect(codes.length).toBe(2 * (31 * 1024 + 1));
  expect(codes.filter((code) => numberToHalf(halfToNumber(code)) !== code)).toEqual([]);
});

test('a number becomes the nearest code, a half the even one', () => {
  expect(numberToHalf(1 + 2 ** -11)).toBe(0x3c00);
  expect(numberToHalf(1 + 3 * 2 ** -11)).toBe(0x3c02);
  expect(numberToHalf(65519.99)).toBe(0x7bff);
  expect(numberToHalf(65520)).toBe(0x7c00);
  expect(numberToHalf(2 ** -25)).toBe(0);
  expect(numberToHalf(2 ** -25 * 1.01)).toBe(1);
  fc.assert(
    fc.property(fc.double({ min: -65504, max: 65504, noNaN: true }), (value) => {
      const code = numberToHalf(value);
      const error = Math.abs(halfToNumber(code) - value);
      for (const other of [code - 1, code + 1]) {
        const beside = halfToNumber(other & 0xffff);
        if (Number.isFinite(beside)) expect(error).toBeLessThanOrEqual(Math.abs(beside - value));
      }
    }),
    runs(500, 20_000),
  );
});
