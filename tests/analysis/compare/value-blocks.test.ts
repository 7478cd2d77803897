import { type MeasuredValue, VALUE_BLOCKS, valueBlocks } from '@surae/analysis';
import { expect, test } from 'vitest';

const whole: MeasuredValue = { value: 20, u: 2, unit: '1', convention: 'scored repetitions' };

test('two whole values have nothing against them', () => {
  expect(valueBlocks(whole, whole)).toEqual([]);
});

test.each([
  ['value-missing', { value: null }],
  ['value-missing', { value: Number.NaN }],
  ['value-missing', { value: Number.POSITIVE_INFINITY }],
  ['value-not-positive', { value: 0 }],
  ['value-not-positive', { value: -3 }],
  ['uncertainty-missing', { u: null }],
  ['uncertainty-missing', { u: Number.NaN }],
  ['uncertainty-missing', { u: 0 }],
  ['different-unit', { unit: 'J' }],
  ['different-convention', { convention: 'attempted repetitions' }],
] as const)('%s, on either side', (block, change) => {
  expect(valueBlocks({ ...whole, ...change }, whole)).toEqual([block]);
  expect(valueBlocks(whole, { ...whole, ...change })).toEqual([block]);
});

test('a missing value is not a zero: both have a reason of their own', () => {
  expect(valueBlocks({ ...whole, value: null, u: null }, { ...whole, value: 0 })).toEqual([
    'value-missing',
    'value-not-positive',
    'uncertainty-missing',
  ]);
});

test('everything at once comes in the order of the list', () => {
  const nothing = { value: null, u: null, unit: 'N', convention: 'net' };
  expect(valueBlocks(nothing, { ...whole, value: 0 })).toEqual([...VALUE_BLOCKS]);
});
