import { columnUses, questionTopics } from '@surae/records';
import { IMPORT_FINDINGS } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  answerWords,
  becauseWords,
  findingWords,
  guessWords,
  questionWords,
} from '../../../apps/dashboard/src/import/import-words.ts';

test('every use of a column, every mark and every side has a word', () => {
  for (const use of columnUses) expect(answerWords(use)).not.toBe('');
  expect(['\t', 'tab', ' ', ',', 'none', 'clock', 'left', 'trunk'].map(answerWords)).toEqual([
    'tabs',
    'tabs',
    'blanks',
    'comma',
    'none',
    'a clock',
    'left',
    'trunk',
  ]);
  expect(answerWords('heel-height')).toBe('height of the heel');
  expect(answerWords('mm')).toBe('mm');
});

test('a guess is never rounded up to certainty, and what was told is no guess', () => {
  const guess = { value: 'N', confidence: 0.995, asks: false, options: [], evidence: [] };
  expect(guessWords(guess, answerWords)).toBe('N (99 % sure)');
  expect(guessWords({ ...guess, evidence: [{ code: 'told', figures: {} }] }, answerWords)).toBe('N (told)');
  expect(guessWords({ ...guess, value: null }, answerWords)).toBe('not known');
});

test('questions, evidence and findings are sentences with their figures', () => {
  for (const topic of questionTopics) {
    expect(questionWords({ id: topic, topic, columns: [], label: 'F', options: [], evidence: [] })).toMatch(
      /^[A-Z].*\?$/,
    );
  }
  expect(becauseWords([{ code: 'unit-row', figures: { line: 2 } }])).toBe('Line 2 holds units.');
  expect(findingWords({ code: 'no-rate', figures: {} })).toBe(IMPORT_FINDINGS['no-rate'].text);
  expect(() => findingWords({ code: 'no-such', figures: {} })).toThrow(/No sentence/);
});
