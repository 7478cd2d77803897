import { expect, test } from 'vitest';
import { uncertainty } from '../../../apps/dashboard/src/words/uncertainty.ts';

test('one digit counts, two where the first is a 1, and nothing is said to be 0', () => {
  expect([0.034, 0.25, 2.71, 34].map(uncertainty)).toEqual(['0.03', '0.3', '3', '30']);
  expect([0.0149, 0.144, 1.26, 14.4].map(uncertainty)).toEqual(['0.015', '0.14', '1.3', '14']);
  expect([0, 0.004].map(uncertainty)).toEqual(['less than 0.01', 'less than 0.01']);
});
