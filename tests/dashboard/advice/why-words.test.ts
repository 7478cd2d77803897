import { editedRule, factTable, judgeRule, propose } from '@surae/guidance';
import { ADVICE_WORDS, GUIDANCE_FACTS, GUIDANCE_RULES } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  answerWords,
  changedByWords,
  factWords,
  ruleWords,
  whyParts,
} from '../../../apps/dashboard/src/advice/why-words.ts';
import { madeFacts } from '../../support/guidance-facts.ts';

test.each(GUIDANCE_RULES.map((rule) => [rule.code, rule] as const))(
  '%s is told with its numbers, and what would change it',
  (_, rule) => {
    for (const text of [ruleWords(rule), changedByWords(rule)]) {
      expect(text).not.toMatch(/[{}]/);
      expect(text).not.toBe(rule.sentence);
      expect(text.length).toBeGreaterThan(10);
    }
  },
);

test.each(GUIDANCE_FACTS.map(({ code }) => code))('%s has words', (code) => {
  expect(factWords(code)).not.toBe(code);
});

test('an answer is told with its unit and bounds, and a bound that is open as at least', () => {
  const from = { what: 'heel-raise', day: '2026-03-01' };
  expect(answerWords('valid-raises', { value: 14, low: 12, high: 15, from })).toBe('14, between 12 and 15');
  expect(answerWords('valid-raises', { value: 14, low: 14, high: 14, from })).toBe('14');
  expect(answerWords('valid-raises', { value: 8, low: 8, high: Number.POSITIVE_INFINITY, from })).toBe('8 or more');
  expect(answerWords('days-at-level', { value: 21, from })).toBe('21 d');
  expect(answerWords('place', { value: 'insertion', from })).toBe('the heel bone');
});

test('a rule that a clinic changed says what stood there before, who changed it, and when', () => {
  const rule = GUIDANCE_RULES.find(({ code }) => code === 'start-single')!;
  const edited = editedRule(rule, { number: 'twenty', value: 25, by: 'AB', day: '2026-02-01' });
  const given = madeFacts({
    place: 'mid-portion',
    'valid-raises': 22,
    'pain-single-raise': 2,
    'settles-overnight': 'yes',
  });
  const trace = judgeRule(edited, 'left', given, factTable(GUIDANCE_FACTS));
  const guidance = propose(given, [edited], GUIDANCE_FACTS);
  const parts = whyParts({
    leg: 'left',
    visitId: 'v',
    guidance,
    fired: [trace],
    lacking: [],
    held: [],
    sure: '',
    missing: () => 'not-given',
  });
  const whose = parts.find(({ title }) => title === ADVICE_WORDS['why-whose'].text);
  expect(whose?.lines).toEqual([
    "This clinic's own since 1 Feb 2026, by AB: Raises on one leg that ask for the heavy level is 25. As published it is 20. Reason: not told.",
  ]);
  expect(parts.map(({ title }) => title)).toHaveLength(7);
});
