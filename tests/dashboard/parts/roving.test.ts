import { expect, test } from 'vitest';
import { roved } from '../../../apps/dashboard/src/parts/roving.ts';

test('arrows go on and back, around both ends', () => {
  expect([roved('ArrowRight', 0, 3), roved('ArrowDown', 1, 3), roved('ArrowRight', 2, 3)]).toEqual([1, 2, 0]);
  expect([roved('ArrowLeft', 2, 3), roved('ArrowUp', 1, 3), roved('ArrowLeft', 0, 3)]).toEqual([1, 0, 2]);
});

test('Home and End go to the ends', () => {
  expect([roved('Home', 2, 12), roved('End', 2, 12)]).toEqual([0, 11]);
});

test('other keys, and a group of nothing, lead nowhere', () => {
  for (const key of ['a', 'Enter', ' ', 'Tab', 'Escape']) expect(roved(key, 1, 3), key).toBeUndefined();
  expect(roved('ArrowRight', 0, 0)).toBeUndefined();
});
