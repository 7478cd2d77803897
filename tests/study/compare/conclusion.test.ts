import { expect, test } from 'vitest';
import { conclusionOf } from '../../../packages/study/src/compare/conclusion.ts';

const said = (low: number, high: number, scale: 'difference' | 'ratio', margin: number | null): string => {
  const { differs, greater } = conclusionOf({ low, high }, { scale, margin });
  return greater === null ? differs : `${differs}, ${greater}`;
};

test.each([
  [1, 5, null, 'yes, first'],
  [-5, -1, null, 'yes, second'],
  [-1, 5, null, 'cannot_tell'],
  [-0.1, 0.1, null, 'cannot_tell'],
  [0, 5, null, 'cannot_tell'],
  [-1, 1, 2, 'no'],
  [0.5, 1, 2, 'no'],
  [-2, 1, 2, 'cannot_tell'],
  [-1, 2, 2, 'cannot_tell'],
  [0.5, 3, 2, 'yes, first'],
  [-3, 3, 2, 'cannot_tell'],
])('a difference of %d to %d with the margin %s: %s', (low, high, margin, words) => {
  expect(said(low, high, 'difference', margin)).toBe(words);
});

test.each([
  [1.1, 1.5, null, 'yes, first'],
  [0.5, 0.9, null, 'yes, second'],
  [0.9, 1.1, null, 'cannot_tell'],
  [0.9, 1.1, 1.2, 'no'],
  [0.8, 1.1, 1.2, 'cannot_tell'],
  [0.84, 1.19, 1.2, 'no'],
  [1.05, 1.3, 1.2, 'yes, first'],
])('a ratio of %d to %d with the margin %s: %s', (low, high, margin, words) => {
  expect(said(low, high, 'ratio', margin)).toBe(words);
});
