import { type Condition, GUIDANCE_FACTS, GUIDANCE_RULES } from '@surae/shared';
import { expect, test } from 'vitest';
import { type ConditionLine, conditionLines, valueWords } from '../../../apps/dashboard/src/rules/condition-words.ts';

const { numbers } = GUIDANCE_RULES.find(({ code }) => code === 'start-learn')!;

function texts({ text, under }: ConditionLine): readonly string[] {
  return [text, ...under.flatMap(texts)];
}

function told(when: Condition): readonly string[] {
  return texts(conditionLines({ when, numbers }));
}

test.each<[Condition, string]>([
  [{ fact: 'valid-raises', atLeast: 'ten' }, 'Single-leg raises that counted, at body weight: 10 or more'],
  [{ not: { fact: 'valid-raises', atLeast: 'ten' } }, 'Single-leg raises that counted, at body weight: less than 10'],
  [{ not: { fact: 'valid-raises', above: 'ten' } }, 'Single-leg raises that counted, at body weight: 10 at most'],
  [{ fact: 'place', is: 'insertion' }, 'Where the tendon is sore: the heel bone'],
  [{ not: { fact: 'place', is: 'no' } }, 'Where the tendon is sore: anything but no'],
  [{ fact: 'irritability', oneOf: ['low', 'moderate'] }, 'Irritability of the tendon: one of low, moderate'],
])('%j reads: %s', (when, text) => {
  expect(told(when)).toEqual([text]);
});

test('of several it is said whether all or any of them, and a no goes before them as it is meant', () => {
  const two: readonly Condition[] = [
    { fact: 'place', is: 'no' },
    { fact: 'irritability', is: 'low' },
  ];
  const lines = ['Where the tendon is sore: no', 'Irritability of the tendon: low'];
  expect(told({ all: two })).toEqual(['all of these hold:', ...lines]);
  expect(told({ any: two })).toEqual(['at least one of these holds:', ...lines]);
  expect(told({ not: { all: two } })).toEqual(['not all of these hold:', ...lines]);
  expect(told({ not: { any: two } })).toEqual(['none of these holds:', ...lines]);
});

test('every answer that a rule can ask for has words, and no condition shows a code', () => {
  const codes = GUIDANCE_FACTS.flatMap(({ holds }) => (holds.kind === 'code' ? holds.codes : []));
  const bare = [...new Set(codes)].filter((code) => valueWords(code) === code);
  // words that are what they are called
  expect(bare.sort()).toEqual(
    [
      'both',
      'clear',
      'high',
      'left',
      'light',
      'low',
      'medium',
      'moderate',
      'no',
      'none',
      'nothing',
      'raises',
      'right',
      'rising',
      'ticked',
      'yes',
    ].filter((code) => bare.includes(code)),
  );
  for (const rule of GUIDANCE_RULES) {
    for (const text of texts(conditionLines(rule)))
      expect(text, rule.code).not.toMatch(/undefined|\{|\}|[a-z]-[a-z]+-[a-z]/);
  }
});
