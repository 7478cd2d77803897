import { expect, test } from 'vitest';
import { lastVerdict } from '../../../apps/dashboard/src/live/last-verdict.ts';

const good = { topS: 10.1, headline: null, valid: 'yes', borderline: false } as const;
const raise = { topS: 10 };
const words = (judged: Parameters<typeof lastVerdict>[2]): string => lastVerdict(5, raise, judged).sentence.text;

test('before there is a report the repetition is counted and nothing else is said', () => {
  expect(words(undefined)).toBe('Counted');
});

test('a report that does not know the repetition says nothing of it either', () => {
  expect(words({ repetitions: [{ ...good, topS: 7.9 }] })).toBe('Counted');
});

test('the first reason of a repetition that is not valid is said', () => {
  expect(words({ repetitions: [good, { ...good, topS: 12.1 }] })).toBe('Valid');
  expect(words({ repetitions: [{ ...good, headline: 'height', valid: 'no' }] })).toBe('Not high enough');
});

test('a verdict that is close, or that cannot be told, is said to be so', () => {
  expect(words({ repetitions: [{ ...good, borderline: true }] })).toBe('Valid, close to the line');
  expect(words({ repetitions: [{ ...good, valid: 'cannot_tell' }] })).toBe('Cannot tell');
});

test('of two judged tops within reach the nearer one is meant', () => {
  const near = { ...good, headline: 'tempo', valid: 'no', topS: 10.05 } as const;
  expect(words({ repetitions: [{ ...good, topS: 9.6 }, near] })).toBe('Off the beat');
});

test('the number that was counted is said with it', () => {
  expect(lastVerdict(5, raise, { repetitions: [good] }).repetition).toBe(5);
});
