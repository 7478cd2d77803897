import { expect, test } from 'vitest';
import { hasOneWordRater, wordCounts } from '../../../packages/analysis/src/agreement/word-counts.ts';

test('by hand: three items, two words that were used and one that was not', () => {
  expect(wordCounts(['no', 'no', 'yes'], ['no', 'yes', 'yes'], ['no', 'perhaps', 'yes'])).toEqual({
    itemCount: 3,
    counts: [
      [1, 0, 1],
      [0, 0, 0],
      [0, 0, 1],
    ],
    rows: [2 / 3, 0, 1 / 3],
    columns: [1 / 3, 0, 2 / 3],
  });
});

test('one item, or words of one rater only, are refused', () => {
  expect(() => wordCounts(['no'], ['no'], ['no'])).toThrow('first');
  expect(() => wordCounts(['no', 'no'], ['no'], ['no'])).toThrow('second');
});

test('a rater who used one word throughout is found, whichever of the two it is', () => {
  const words = ['no', 'yes'];
  const of = (first: string[], second: string[]): boolean => hasOneWordRater(wordCounts(first, second, words));
  expect(of(['no', 'yes'], ['yes', 'yes'])).toBe(true);
  expect(of(['no', 'no'], ['yes', 'no'])).toBe(true);
  expect(of(['no', 'yes'], ['yes', 'no'])).toBe(false);
});
