import { expect, test } from 'vitest';
import { figureWords, intervalWords } from '../../../apps/dashboard/src/result/figure-words.ts';
import type { LegFigure } from '../../../apps/dashboard/src/result/leg-figure.ts';

const height: LegFigure = { kind: 'measured', value: 9.24, low: 8.26, high: 10.22, atLeast: false };
const capped: LegFigure = { kind: 'measured', value: 60, low: 58, high: 60, atLeast: true };

test('a figure and its interval are cut to the digits that are shown', () => {
  expect([figureWords(height, 1), intervalWords(height, 1)]).toEqual(['9.2', '95 %: 8.3 to 10.2']);
  expect([figureWords(height, 0), intervalWords(height, 0)]).toEqual(['9', '95 %: 8 to 10']);
});

test('a rise that rounds to nothing is not told as minus zero', () => {
  const rise: LegFigure = { kind: 'measured', value: -0.00453, low: -0.2, high: 0.2, atLeast: false };
  expect([figureWords(rise, 1), intervalWords(rise, 0)]).toEqual(['0.0', '95 %: no other number']);
});

test('an interval of one number says so', () => {
  expect(intervalWords({ ...capped, low: 60, atLeast: false }, 0)).toBe('95 %: no other number');
});

test('a lower bound is no value, and has no upper bound', () => {
  expect([figureWords(capped, 0), intervalWords(capped, 0)]).toEqual(['at least 60', 'no upper bound']);
});

test('what was not measured is said with its reason', () => {
  const open: LegFigure = { kind: 'open', why: 'This leg was not tested.' };
  expect([figureWords(open, 1), intervalWords(open, 1)]).toEqual(['not measured', 'This leg was not tested.']);
});
