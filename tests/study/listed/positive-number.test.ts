import { expect, test } from 'vitest';
import { positiveNumber } from '../../../packages/study/src/listed/positive-number.ts';

test('digits with or without a point are a number, blanks around them do no harm', () => {
  expect(['186', '70.5', ' 0.25 ', '007'].map(positiveNumber)).toEqual([186, 70.5, 0.25, 7]);
});

test('everything else is none: zero, signs, powers, commas, units, hexadecimal, too large', () => {
  const others = ['0', '0.0', '-3', '+3', '1e3', '70,5', '.5', '5.', '12mm', '0x10', 'NaN', 'Infinity', '', ' '];
  expect([...others, '9'.repeat(400)].filter((text) => positiveNumber(text) !== undefined)).toEqual([]);
});
