import { expect, test } from 'vitest';
import { countAgreement } from '../../../packages/analysis/src/agreement/count-agreement.ts';

test('sets counted alike, to one, and the largest difference with its sign', () => {
  expect(countAgreement([20, 25, 30, 12], [20, 26, 27, 12])).toEqual({
    setCount: 4,
    same: 2,
    withinOne: 3,
    largest: 3,
  });
  expect(countAgreement([5], [9])).toEqual({ setCount: 1, same: 0, withinOne: 0, largest: -4 });
});

test('what is no count is refused', () => {
  for (const bad of [1.5, -1, Number.NaN]) expect(() => countAgreement([3, bad], [3, 4])).toThrow('counts');
  expect(() => countAgreement([], [])).toThrow('first');
  expect(() => countAgreement([1], [1, 2])).toThrow('second');
});
