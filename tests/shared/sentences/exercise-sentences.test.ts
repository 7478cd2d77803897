import {
  EXERCISE_HOW_WORDS,
  EXERCISE_WORDS,
  GUIDANCE_SENTENCES,
  PLAN_ADVICE_CHOICES,
  type Sentence,
} from '@surae/shared';
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

test('no exercise and no rule is said to take pain away, and of hard holds it is said that they are not for it', () => {
  // holds of 45 s made no difference that counts in sore Achilles tendons: O'Neill 2019; Clifford 2020 BMJ Open Sport Exerc Med 6:e000760
  const promise = /\brelie(?:f|ves?)\b|\bpain[- ]free\b|\b(?:takes?|easing|eases?|lowers?) (?:away )?(?:the )?pain\b/i;
  const said = [EXERCISE_WORDS, EXERCISE_HOW_WORDS, PLAN_ADVICE_CHOICES, GUIDANCE_SENTENCES];
  const found = said.flatMap((words) => Object.values<Sentence>(words)).filter(({ text }) => promise.test(text));
  expect(found.map(({ text }) => text)).toEqual([
    expect.stringMatching(/relief of pain right after is not to be expected/),
  ]);
});
