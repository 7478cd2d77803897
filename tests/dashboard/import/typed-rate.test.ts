import { expect, test } from 'vitest';
import { rateOf } from '../../../apps/dashboard/src/import/typed-rate.ts';

test('a rate is a number from 10 to 2000, by point or comma', () => {
  expect(['50', ' 62,5 ', '62.5', '10', '2000'].map(rateOf)).toEqual([50, 62.5, 62.5, 10, 2000]);
  expect(['', ' ', '9.9', '2001', 'fast', '5 0'].map(rateOf)).toEqual(Array.from({ length: 6 }));
});
