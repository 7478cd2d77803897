import { factsOf, factTable, GuidanceError, judgeRule, numbersOf } from '@surae/guidance';
import { GUIDANCE_FACTS, GUIDANCE_RULES, type GuidanceRule } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { known, madeFacts } from '../support/guidance-facts.ts';
import { factOf, givenIn, tellingAnswers, worldsOf } from '../support/rule-worlds.ts';

const facts = factTable(GUIDANCE_FACTS);
const legOf = ({ of }: GuidanceRule) => (of === 'leg' ? 'left' : null);
const rules = GUIDANCE_RULES.map((rule) => [rule.code, rule] as const);

const judged = (
  rule: GuidanceRule,
  world: Readonly<Record<string, number | string>>,
  without: readonly string[] = [],
) => judgeRule(rule, legOf(rule), givenIn(world, without), facts);

describe.each(rules)('%s', (_, rule) => {
  const worlds = worldsOf(rule);

  test('can hold and can be ruled out, and is told wherever everything is known', () => {
    const held = new Set(worlds.map((world) => judged(rule, world).held));
    expect([...held].sort()).toEqual(['no', 'yes']);
  });

  test.each(numbersOf(rule.when))(
    '$fact at $number: just under, at and just over it are not all the same',
    ({ fact, number }) => {
      const limit = rule.numbers[number].value;
      const at = (world: Readonly<Record<string, number | string>>) =>
        [limit - 1e-6, limit, limit + 1e-6]
          .filter((one) => tellingAnswers(rule, fact).includes(one))
          .map((one) => judged(rule, { ...world, [fact]: one }).held);
      expect(worlds.some((world) => new Set(at(world)).size > 1)).toBe(true);
    },
  );

  test.each(factsOf(rule.when))(
    'without %s it is never better known than with every answer that it could have',
    (code) => {
      let open = 0;
      for (const world of worlds) {
        const { held, missing, treatedAs } = judged(rule, world, [code]);
        const each = new Set(tellingAnswers(rule, code).map((one) => judged(rule, { ...world, [code]: one }).held));
        if (rule.standIns?.includes(code) === true) {
          expect(treatedAs).toEqual([{ fact: code, as: factOf(code).standIn, missing: 'not-asked' }]);
          expect(held).toBe(judged(rule, { ...world, [code]: factOf(code).standIn! }).held);
          open++;
        } else if (each.size > 1) {
          expect([held, missing]).toEqual(['cannot-tell', [code]]);
          open++;
        } else if (held !== 'cannot-tell') {
          expect(each).toContain(held);
        }
      }
      expect(open).toBeGreaterThan(0);
    },
  );
});

test('says which answers it rests on, and where they are from', () => {
  const rule = GUIDANCE_RULES.find(({ code }) => code === 'start-learn')!;
  const given = madeFacts({ 'valid-raises': known(9, { low: 8, high: 9 }), 'pain-single-raise': 2 });
  expect(judgeRule(rule, 'left', given, facts)).toMatchObject({
    held: 'yes',
    leg: 'left',
    used: [
      { fact: 'valid-raises', answer: { value: 9, low: 8, high: 9, from: { what: 'visit', day: '2026-03-01' } } },
      { fact: 'pain-single-raise', answer: { value: 2 } },
    ],
  });
});

test.each([
  ['a number under its range', { 'valid-raises': -1 }],
  ['no number', { 'valid-raises': Number.NaN }],
  ['a code for a number', { 'valid-raises': 'many' }],
  ['bounds the wrong way round', { 'valid-raises': known(5, { low: 6, high: 4 }) }],
  ['pain over ten', { 'pain-single-raise': 11 }],
])('refuses %s', (_, told) => {
  const rule = GUIDANCE_RULES.find(({ code }) => code === 'start-learn')!;
  expect(() => judgeRule(rule, 'left', madeFacts(told), facts)).toThrow(GuidanceError);
});

test('refuses a fact that is not in the table', () => {
  const rule = GUIDANCE_RULES.find(({ code }) => code === 'start-learn')!;
  expect(() => judgeRule(rule, 'left', madeFacts({}), factTable([]))).toThrow('unknown-fact');
});
