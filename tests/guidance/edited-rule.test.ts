import { editedRule, propose, weakestMark } from '@surae/guidance';
import { GUIDANCE_FACTS, GUIDANCE_RULES } from '@surae/shared';
import { expect, test } from 'vitest';
import { madeFacts } from '../support/guidance-facts.ts';

const rule = GUIDANCE_RULES.find(({ code }) => code === 'start-learn')!;
const edited = editedRule(rule, { number: 'ten', value: 8, by: 'K4', day: '2026-03-02' });

test('a number that a clinic changed says who, when and what stood before, and the rule as given stays', () => {
  expect(edited.edits).toEqual([{ number: 'ten', by: 'K4', day: '2026-03-02', was: 10 }]);
  expect(edited.numbers['ten']).toMatchObject({ value: 8, mark: 'common-practice' });
  expect(edited.numbers['ten'].source).toContain(rule.numbers['ten'].source);
  expect([rule.edits, rule.numbers['ten'].value]).toEqual([undefined, 10]);
  const twice = editedRule(edited, { number: 'ten', value: 7, by: 'K5', day: '2026-03-03' });
  expect(twice.edits?.map(({ was }) => was)).toEqual([10, 8]);
});

test('the answer goes by it and carries it', () => {
  const rules = GUIDANCE_RULES.map((one) => (one.code === rule.code ? edited : one));
  const given = madeFacts({ 'valid-raises': 9, 'pain-double-raise': 0, 'pain-single-raise': 0 });
  const codes = (which: typeof rules) =>
    propose(given, which, GUIDANCE_FACTS).proposals.map(({ rule: { code } }) => code);
  expect([codes(GUIDANCE_RULES as typeof rules).includes('start-learn'), codes(rules).includes('start-learn')]).toEqual(
    [true, false],
  );
  expect(propose(given, rules, GUIDANCE_FACTS).edited.map(({ code }) => code)).toEqual(['start-learn']);
});

test('what is proposed is no better supported than its least supported number', () => {
  expect([rule.mark, weakestMark(rule)]).toEqual(['read', 'common-practice']);
});

test.each([
  ['eleven', 8],
  ['toString', 8],
  ['ten', Number.NaN],
])('%s to %d is refused', (number, value) => {
  expect(() => editedRule(rule, { number, value, by: 'K4', day: '2026-03-02' })).toThrow(RangeError);
});
