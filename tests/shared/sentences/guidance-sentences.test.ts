import {
  GUIDANCE_CHANGED_BY,
  GUIDANCE_FACT_WORDS,
  GUIDANCE_FACTS,
  GUIDANCE_RULES,
  GUIDANCE_SENTENCES,
  GUIDANCE_SETTLED_BY,
  type Sentences,
} from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { JUDGING_WORDS } from '../../support/judging-words.ts';

const families = [GUIDANCE_SENTENCES, GUIDANCE_CHANGED_BY, GUIDANCE_FACT_WORDS, GUIDANCE_SETTLED_BY];
const said = families.flatMap((words: Sentences<string>) => Object.values(words));
const of = (words: Sentences<string>, code: string) => (Object.hasOwn(words, code) ? words[code].text : '');

test.each(said.map(({ id, text }) => [id, text]))('%s is plain and judges nobody', (_, text) => {
  for (const word of [...JUDGING_WORDS, /\bmust\b/i]) expect(text).not.toMatch(word);
  expect(text).toMatch(/^[A-Z]/);
});

test.each(GUIDANCE_RULES.map((rule) => [rule.code, rule] as const))(
  '%s says what it proposes and what would change it, with numbers of its own alone',
  (_, { numbers, sentence, changedBy }) => {
    const texts = [of(GUIDANCE_SENTENCES, sentence), of(GUIDANCE_CHANGED_BY, changedBy)];
    for (const text of texts) {
      expect(text).toMatch(/\.$|\{next\}$/);
      for (const [, blank] of text.matchAll(/\{(\w+)\}/g)) {
        expect(blank === 'next' || Object.hasOwn(numbers, blank), `{${blank}} in: ${text}`).toBe(true);
      }
      // a number of a rule may be changed by a clinic: no sentence writes one out, but for the scale of pain
      expect(text.replaceAll('of 10', '')).not.toMatch(/\d/);
    }
  },
);

describe('every fact', () => {
  const facts = GUIDANCE_FACTS.filter(({ code }) => !code.startsWith('safety.')).map(({ code }) => code);

  test.each(facts)('%s has words, and words for what would settle it', (code) => {
    expect(of(GUIDANCE_FACT_WORDS, code)).not.toBe('');
    expect(of(GUIDANCE_SETTLED_BY, code)).toMatch(/\.$/);
  });

  test('no words are left over', () => {
    expect(Object.keys(GUIDANCE_FACT_WORDS).sort()).toEqual([...facts].sort());
    expect(
      Object.keys(GUIDANCE_SETTLED_BY)
        .filter((code) => code !== 'line')
        .sort(),
    ).toEqual([...facts].sort());
  });
});

test('no sentence is left over', () => {
  expect(Object.keys(GUIDANCE_SENTENCES).sort()).toEqual(
    [...new Set(GUIDANCE_RULES.map((one) => one.sentence))].sort(),
  );
  expect(Object.keys(GUIDANCE_CHANGED_BY).sort()).toEqual(
    [...new Set(GUIDANCE_RULES.map((one) => one.changedBy))].sort(),
  );
});
