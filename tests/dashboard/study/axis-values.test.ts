import { expect, test } from 'vitest';
import { axisValues } from '../../../apps/dashboard/src/study/axis-values.ts';

const texts = (low: number, high: number, most: number): string[] =>
  axisValues(low, high, most).map(({ text }) => text);

test('places are round and no more than asked for', () => {
  expect(texts(0, 10, 5)).toEqual(['0', '2', '4', '6', '8', '10']);
  expect(texts(-0.3, 9.7, 4)).toEqual(['0', '5']);
  expect(texts(3.02, 3.29, 3)).toEqual(['3.1', '3.2']);
});

test('an axis of no length has no places', () => {
  expect(axisValues(3, 3, 5)).toEqual([]);
});
