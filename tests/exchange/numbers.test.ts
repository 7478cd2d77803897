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

test('small and large numbers keep nine digits, not nine decimals; what is left out stays so', () => {
  expect(rounded([1.23456789123e-12, 9.87654321987e15, -0.1, { deep: [123456789.4] }, undefined])).toEqual([
    1.23456789e-12,
    9.87654322e15,
    -0.1,
    { deep: [123456789] },
    undefined,
  ]);
});

test('nine digits are those of the decimal text, to the last bit', () => {
  const same = (x: number): boolean => Object.is(rounded(x), Number(x.toPrecision(9)));
  fc.assert(fc.property(fc.double(), same), { numRuns: 2000 });
  fc.assert(
    fc.property(
      fc.integer({ min: -2_000_000_000, max: 2_000_000_000 }),
      fc.integer({ min: -12, max: 3 }),
      (n, power) =>
        // middles between two numbers of nine digits too
        same(n * 10 ** power) && same((n + 0.5) * 10 ** power),
    ),
    { numRuns: 5000 },
  );
  for (const x of [0, -0, 1, 10, 1e8, 1e9, 99999999.95, 999999999.5, 123456789.5, 1e-15, 5e-324, Infinity, NaN]) {
    expect(same(x)).toBe(true);
  }
});

test('a decimal reads as the same double, sign of zero included', () => {
  expect(decimal(-0)).toBe('-0');
  fc.assert(fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (x) => Object.is(Number(decimal(x)), x)));
});
