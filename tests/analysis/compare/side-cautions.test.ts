import { expect, test } from 'vitest';
import { sideCautions } from '../../../packages/analysis/src/compare/side-cautions.ts';

const plain = { oneSidedSport: false, legLengthRaise: false, ageYears: 40 };
const clear = { value: 0.7, low: 0.53, high: 0.93 };

test('that the other leg may be low too goes with every ratio', () => {
  expect(sideCautions(clear, plain)).toEqual(['other-side-may-be-low']);
});

test.each([
  ['earlier-injury-confirmed', { confirmedInjury: true }],
  ['one-sided-sport', { oneSidedSport: true }],
  ['leg-length-raise', { legLengthRaise: true }],
  ['under-18', { ageYears: 17.9 }],
  ['not-asked', { oneSidedSport: null }],
  ['not-asked', { legLengthRaise: null }],
  ['not-asked', { ageYears: null }],
  ['not-asked', { ageYears: Number.NaN }],
  ['not-asked', { oneSidedSport: undefined as unknown as null }],
] as const)('%s', (caution, change) => {
  expect(sideCautions(clear, { ...plain, ...change })).toEqual(['other-side-may-be-low', caution]);
});

test('18 is not under 18', () => {
  expect(sideCautions(clear, { ...plain, ageYears: 18 })).toEqual(['other-side-may-be-low']);
});

test('equal legs within the interval are said, on either side of one', () => {
  for (const [low, high] of [
    [0.8, 1.1],
    [1, 1.3],
    [0.7, 1],
  ]) {
    expect(sideCautions({ value: 0.9, low, high }, plain)).toContain('interval-holds-equal');
  }
  expect(sideCautions({ value: 1.2, low: 1.01, high: 1.4 }, plain)).not.toContain('interval-holds-equal');
});
