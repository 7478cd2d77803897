import { EXERCISE_HOW_WORDS, EXERCISE_WORDS, PLAN_ADVICE_CHOICES } from '@surae/shared';
import { expect, test } from 'vitest';

test('what is read at home is short: no sentence of more than fifteen words', () => {
  for (const { text } of Object.values(EXERCISE_HOW_WORDS)) {
    for (const sentence of text.split(/(?<=\.) /)) {
      expect(sentence.split(' ').length, sentence).toBeLessThanOrEqual(15);
      expect(sentence).toMatch(/^[A-Z].*\.$/);
    }
  }
});

test('a name and a line of advice are no sentences, and say no number', () => {
  for (const { text } of [...Object.values(EXERCISE_WORDS), ...Object.values(PLAN_ADVICE_CHOICES)]) {
    expect(text).toMatch(/^[A-Z][^.\d]*$/);
  }
});
