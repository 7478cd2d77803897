import { expect, test } from 'vitest';
import { injuryStanding } from '../../../packages/analysis/src/compare/earlier-injury.ts';

test.each([
  ['none', false],
  ['not-asked', null],
  ['recent', true],
  ['recent', { monthsAgo: null, confirmed: true }],
  ['recent', { monthsAgo: Number.NaN, confirmed: true }],
  ['recent', { monthsAgo: Number.POSITIVE_INFINITY, confirmed: true }],
  ['recent', { monthsAgo: -20, confirmed: true }],
  ['recent', { monthsAgo: 3, confirmed: true }],
  // more than twelve months: twelve are not
  ['recent', { monthsAgo: 12, confirmed: true }],
  ['not-confirmed', { monthsAgo: 12.1, confirmed: null }],
  ['not-confirmed', { monthsAgo: 40, confirmed: false }],
  ['confirmed', { monthsAgo: 12.1, confirmed: true }],
] as const)('%s: %j', (standing, injury) => {
  expect(injuryStanding(injury)).toBe(standing);
});

test('an answer that a file lacks, or that is none, was not asked', () => {
  for (const answer of [undefined, 'no', 0]) {
    expect(injuryStanding(answer as unknown as null)).toBe('not-asked');
  }
  expect(injuryStanding({} as { monthsAgo: null; confirmed: null })).toBe('recent');
});
