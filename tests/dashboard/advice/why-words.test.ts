import { editedRule, factTable, judgeRule, propose } from '@surae/guidance';
import { ADVICE_WORDS, GUIDANCE_FACTS, GUIDANCE_RULES } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  answerWords,
  changedByWords,
  factWords,
  numberText,
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
  expect(answerWords('age-at-least', { value: 44, from })).toBe('44 years');
  expect(answerWords('place', { value: 'insertion', from })).toBe('the heel bone');
});

test('a number is told as it counts, and not rounded to one that does not', () => {
  expect([numberText(0.85, '1'), numberText(0.25, '1'), numberText(5, '1'), numberText(2.5, '%')]).toEqual([
    '0.85',
    '0.25',
    '5',
    '2.5 %',
  ]);
  expect([numberText(-10, 'deg'), numberText(6, 'mo'), numberText(45, 'a')]).toEqual(['-10°', '6 months', '45 years']);
});

test.each([
  ['start-calm', { irritability: 'high' }, 'Irritability of the tendon: high', 'Common practice, no source.'],
  ['recovery-high', { 'last-load': 'high', 'recovery-days': 1 }, 'Tendon load of the last run', 'From memory'],
] as const)('%s: a grade is told as a judgement with its mark, and no measurement', (code, left, fact, mark) => {
  const rule = GUIDANCE_RULES.find((one) => one.code === code)!;
  const given = madeFacts(left);
  const trace = judgeRule(rule, 'left', given, factTable(GUIDANCE_FACTS));
  const parts = whyParts({
    leg: 'left',
    visitId: 'v',
    guidance: propose(given, [rule], GUIDANCE_FACTS),
    fired: [trace],
    lacking: [],
    held: [],
    sure: '',
    missing: () => 'not-given',
  });
  const read = parts.find(({ title }) => title === ADVICE_WORDS['why-from'].text)?.lines ?? [];
  const graded = read.filter((line) => line.includes('judged, and not measured'));
  expect(graded).toHaveLength(1);
  expect(graded[0]).toContain(fact);
  expect(graded[0]).toContain(mark);
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
