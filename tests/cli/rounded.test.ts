import { expect, test } from 'vitest';
import { rounded } from '../../apps/cli/src/rounded.ts';

test('numbers lose the last bits of binary arithmetic, at any depth', () => {
  expect(rounded({ a: 0.1 + 0.2, b: [1 / 3, { c: 123456789.4 }] })).toEqual({
    a: 0.3,
    b: [0.333333333, { c: 123456789 }],
  });
});

test('small and large numbers keep nine digits, not nine decimals', () => {
  expect([rounded(1.23456789123e-12), rounded(9.87654321987e15), rounded(-0.1)]).toEqual([
    1.23456789e-12, 9.87654322e15, -0.1,
  ]);
});

test('words, flags and nothing stay as they are', () => {
  expect(rounded(['1.00', true, null, undefined])).toEqual(['1.00', true, null, undefined]);
});
