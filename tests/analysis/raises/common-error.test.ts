import { expect, test } from 'vitest';
import { ownUncertainty } from '../../../packages/analysis/src/raises/common-error.ts';

test('the shared part is taken off in squares: 5 mm with 3 % of 10 cm shared leaves 4 mm', () => {
  expect(ownUncertainty(0.005, 0.1, 0.03)).toBeCloseTo(0.004, 12);
});

test('a shared part larger than the whole leaves nothing, and none shared leaves all', () => {
  expect(ownUncertainty(0.002, 0.1, 0.03)).toBe(0);
  expect(ownUncertainty(0.002, 0.1, 0)).toBe(0.002);
});
