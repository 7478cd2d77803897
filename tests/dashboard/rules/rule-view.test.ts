import { clinicRules } from '@surae/guidance';
import { GUIDANCE_RULES, OWN_NUMBER_WHY } from '@surae/shared';
import { expect, test } from 'vitest';
import { ruleGroups, ruleView } from '../../../apps/dashboard/src/rules/rule-view.ts';

function published(code: string) {
  return GUIDANCE_RULES.find((one) => one.code === code)!;
}

test('every rule stands in one group, in words that leave no blank open', () => {
  const groups = ruleGroups(GUIDANCE_RULES);
  expect(
    groups
      .flatMap(({ rules }) => rules)
      .map(({ code }) => code)
      .sort(),
  ).toEqual(GUIDANCE_RULES.map(({ code }) => code).sort());
  expect(new Set(groups.map(({ title }) => title)).size).toBe(groups.length);
  for (const rule of GUIDANCE_RULES) {
    const view = ruleView(rule);
    const all = [view.title, view.source, view.changedBy, ...view.asks, ...view.also];
    for (const text of [...all, ...view.numbers.flatMap(({ name, lines }) => [name, ...lines])]) {
      expect(text, rule.code).not.toMatch(/[{}]|undefined|^$/);
    }
    expect(view.own).toEqual([]);
  }
});

test('rules about lines of the safety list are told apart by their line', () => {
  const titles = GUIDANCE_RULES.filter(({ about }) => about === 'block').map((rule) => ruleView(rule).title);
  expect(new Set(titles).size).toBe(titles.length);
});

test('a number is named, with what is published, its source, and in how many rules it stands', () => {
  const view = ruleView(published('start-learn'));
  const ten = view.numbers.find(({ id }) => id === 'guidance.raises-ten')!;
  expect([ten.name, ten.value, ten.isOwn]).toEqual(['Raises on one leg that ask for the floor level', 10, false]);
  expect(ten.lines).toEqual([
    'As published: 10. Common practice, no source.',
    `The same number stands in rules: ${ten.inRules}. It changes in all of them.`,
  ]);
  expect(ten.inRules).toBeGreaterThan(3);
});

test.each([
  ['lock-no-raise', 'lock'],
  ['range-level', 'heel-bone'],
  ['step-drop', 'name'],
] as const)('a number of %s that stays as it is says why', (code, why) => {
  const fixed = ruleView(published(code)).numbers.filter(({ bound }) => bound === null);
  expect(fixed.flatMap(({ lines }) => lines).join(' ')).toContain(OWN_NUMBER_WHY[why].text);
});

test("a clinic's own number says since when, by whom, why, and what is published", () => {
  const own = { number: 'guidance.raises-ten', unit: '1', published: 10, value: 8, reason: 'older people', by: 'K4' };
  const { rules } = clinicRules(GUIDANCE_RULES, [{ ...own, day: '2026-03-02' }]);
  const view = ruleView(rules.find(({ code }) => code === 'start-learn')!);
  expect(view.own).toEqual([
    "This clinic's own rule since 2 Mar 2026: Raises on one leg that ask for the floor level is 8. As published it is 10.",
  ]);
  expect(view.numbers.find(({ isOwn }) => isOwn)?.lines).toEqual([
    'As published: 10. Common practice, no source.',
    'This clinic: 8, since 2 Mar 2026 (K4). Reason: older people',
    expect.stringContaining('The same number'),
  ]);
  expect(view.condition.under.map(({ under }) => under.map(({ text }) => text)).flat()).toContain(
    'Single-leg raises that counted, at body weight: less than 8',
  );
});
