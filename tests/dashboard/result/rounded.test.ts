import { expect, test } from 'vitest';
import { rounded } from '../../../apps/dashboard/src/result/rounded.ts';

test('numbers are cut to nine digits at any depth; everything else stays', () => {
  expect(rounded({ a: 1 / 3, b: [2 / 3, 'x', null], c: { d: 12345.67891234 } })).toEqual({
    a: 0.333333333,
    b: [0.666666667, 'x', null],
    c: { d: 12345.6789 },
  });
});
