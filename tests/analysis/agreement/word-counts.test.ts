import { expect, test } from 'vitest';
import { wordCounts } from '../../../packages/analysis/src/agreement/word-counts.ts';

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
