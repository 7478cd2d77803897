import { decimal, rounded } from '@surae/exchange';
import fc from 'fast-check';
import { expect, test } from 'vitest';

test('numbers anywhere in a value are cut to nine digits; words and null stay', () => {
  expect(rounded({ a: [0.1 + 0.2, null, 'x'], b: 1 / 3, c: true })).toEqual({
    a: [0.3, null, 'x'],
    b: 0.333333333,
    c: true,
  });
});

test('a decimal reads as the same double, sign of zero included', () => {
  expect(decimal(-0)).toBe('-0');
  fc.assert(fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (x) => Object.is(Number(decimal(x)), x)));
});
