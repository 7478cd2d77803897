import { expect, test } from 'vitest';
import { setupDefaults } from '../../../packages/analysis/src/assess/defaults/setup.ts';
import { noGuess, weigh } from '../../../packages/analysis/src/setup/guess.ts';

const rule = { ...setupDefaults.guess, askBelow: 0.9, offerFrom: 0.02 };
const evidence = { code: 'x', figures: {} };

test('weights of 9 and 1 are 0.9 and 0.1, and 0.9 is not asked about', () => {
  const guess = weigh([['a', Math.log(1)] as const, ['b', Math.log(9)] as const], -Infinity, evidence, rule);
  expect(guess.answer).toBe('b');
  expect(guess.confidence).toBeCloseTo(0.9, 12);
  expect(guess.likely.map(({ answer }) => answer)).toEqual(['b', 'a']);
  const less = weigh([['a', Math.log(1.1)] as const, ['b', Math.log(9)] as const], -Infinity, evidence, rule);
  expect([guess.confidence >= 0.9 - 1e-12, less.asks]).toEqual([true, true]);
});

test('what is less probable than none of these is no answer', () => {
  const guess = weigh([['a', 0] as const], 1, evidence, rule);
  expect([guess.answer, guess.confidence, guess.asks]).toEqual([null, 0, true]);
});

test('what is improbable is not offered', () => {
  const guess = weigh([['a', 0] as const, ['b', Math.log(0.01)] as const], -Infinity, evidence, rule);
  expect(guess.likely.length).toBe(1);
});

test('weights far below anything are still weighed', () => {
  const guess = weigh([['a', -5000] as const, ['b', -5001] as const], -Infinity, evidence, rule);
  expect(guess.confidence).toBeCloseTo(1 / (1 + Math.exp(-1)), 12);
});

test('nothing to say offers all alike', () => {
  expect(noGuess(['a', 'b'], evidence)).toMatchObject({ answer: null, confidence: 0, asks: true });
});
