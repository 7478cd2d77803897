import { ageIn, ageLeaving } from '@surae/exchange';
import { expect, test } from 'vitest';

// 45 CFR 164.514(b)(2)(i)(C): all ages over 89 may stand in one category of 90 or older (from memory)
test.each([
  [null, null, null],
  [89.9, 89, null],
  [90, null, '90-and-over'],
  [104, null, '90-and-over'],
  [0.5, 0, null],
] as const)('%s leaves as %s, %s', (age, ageYears, ageGroup) => {
  expect(ageLeaving(age)).toEqual({ ageYears, ageGroup });
});

test('the age reached in a year', () => {
  expect([ageIn(1957, '2026-03-01'), ageIn(null, '2026'), ageIn(1957, null), ageIn(2030, '2026')]).toEqual([
    69,
    null,
    null,
    null,
  ]);
});
