import type { Sentence } from '@surae/shared';
import * as shared from '@surae/shared';
import { expect, test } from 'vitest';
import { lengthened, sameLength } from '../../../apps/dashboard/src/language/pseudo.ts';

const sentences = Object.values(shared).flatMap((value) =>
  typeof value === 'object' ? Object.values(value as object).filter(isSentence) : [],
);

function isSentence(value: unknown): value is Sentence {
  return typeof (value as { text?: unknown } | null)?.text === 'string';
}

const blanksOf = (text: string): string[] => (text.match(/\{\w+\}/g) ?? []).sort();

test('each vowel is doubled and has an accent, and some letters more', () => {
  expect(lengthened('Left is on the left.')).toBe('Léèft íìs óòñń théè léèft.');
  expect(sameLength('Left is on the left.')).toBe('Léft ís óñ thé léft.');
  expect([lengthened('kg'), sameLength('')]).toEqual(['kg', '']);
});

test('a blank keeps its name, whatever stands around it', () => {
  expect(lengthened('{count} of {all}a')).toBe('{count} óòf {all}áà');
  expect(sameLength('{value}')).toBe('{value}');
});

test('the sentences are about two fifths longer in all, with the same blanks, and none has a plain vowel left', () => {
  expect(sentences.length).toBeGreaterThan(900);
  const letters = (texts: readonly string[]): number => texts.reduce((sum, text) => sum + text.length, 0);
  const texts = sentences.map(({ text }) => text);
  const ratio = letters(texts.map(lengthened)) / letters(texts);
  expect(ratio).toBeGreaterThan(1.3);
  expect(ratio).toBeLessThan(1.45);
  for (const text of texts) {
    expect(blanksOf(lengthened(text))).toEqual(blanksOf(text));
    expect(lengthened(text).replaceAll(/\{\w+\}/g, '')).not.toMatch(/[aeiou]/i);
    expect(sameLength(text)).toHaveLength(text.length);
  }
});
