import { type Reliability, scoredRepetitions } from '@surae/analysis';
import { expect, test } from 'vitest';
import '../../support/close.ts';

const published: Reliability = {
  scale: 'natural',
  standardError: 3,
  unit: '1',
  source: { kind: 'published', id: 'r', citation: 'a study', group: 'adults', people: 32 },
};
const bounds = (scored: number, scoredLow: number, scoredHigh: number) => ({ scored, scoredLow, scoredHigh });

test('a count without doubt has the error between tests', () => {
  expect(scoredRepetitions(bounds(20, 20, 20), published)).toEqual({
    value: 20,
    u: 3,
    unit: '1',
    convention: 'scored repetitions',
  });
});

test('bounds that are 2 x 1.96 x 4 apart add 4 to 3 as 5', () => {
  expect([scoredRepetitions(bounds(20, 12.16, 27.84), published).u!]).toBeCloseToEach([5], { rtol: 1e-12, atol: 0 });
});

test('an error of the logarithm grows with the count', () => {
  const log: Reliability = { ...published, scale: 'log', standardError: 0.1 };
  expect(scoredRepetitions(bounds(30, 30, 30), log).u).toBe(3);
});

test('without an error between tests there is none at all, however sure the count is', () => {
  expect(scoredRepetitions(bounds(20, 20, 20), null)).toMatchObject({ value: 20, u: null });
  expect(scoredRepetitions(bounds(20, 19, 21), { ...published, unit: 'J' }).u).toBeNull();
});
