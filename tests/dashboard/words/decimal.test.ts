import { expect, test } from 'vitest';
import { decimal } from '../../../apps/dashboard/src/words/decimal.ts';

test('so many digits behind the point, also where they are zero', () => {
  expect([decimal(9.24, 1), decimal(9, 1), decimal(1234.5678, 2), decimal(-3.16, 1)]).toEqual([
    '9.2',
    '9.0',
    '1234.57',
    '-3.2',
  ]);
});

test('nothing is told as minus zero', () => {
  expect([decimal(-0.00453, 1), decimal(-0.4, 0), decimal(-0, 1), decimal(-0.049, 1)]).toEqual([
    '0.0',
    '0',
    '0.0',
    '0.0',
  ]);
  expect(decimal(-0.06, 1)).toBe('-0.1');
});
