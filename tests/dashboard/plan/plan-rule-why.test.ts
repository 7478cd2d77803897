import type { PlanFacts } from '@surae/casebook';
import { ADVICE_WORDS, MARK_WORDS, PLAN_RULE_SENTENCES, PLAN_RULES, type PlanRuleCode } from '@surae/shared';
import { expect, test } from 'vitest';
import { planRuleWhy } from '../../../apps/dashboard/src/plan/plan-rule-why.ts';
import { holdsNoCode } from '../../support/no-code.ts';

const codes = Object.keys(PLAN_RULES) as readonly PlanRuleCode[];
const places = [null, 'no', 'mid-portion', 'insertion', 'both-places'] as const;
const ways = places.flatMap((left) => places.map((right): Pick<PlanFacts, 'sore'> => ({ sore: { left, right } })));

test.each(codes)('%s answers why this, from what, how sure, whose rule, and what would change it', (rule) => {
  const { source, mark, version, override } = PLAN_RULES[rule];
  for (const facts of ways) {
    const parts = planRuleWhy(rule, facts);
    const of = (code: keyof typeof ADVICE_WORDS): string =>
      (parts.find(({ title }) => title === ADVICE_WORDS[code].text)?.lines ?? []).join('\n');
    for (const code of ['why-from', 'why-rule', 'why-sure', 'why-whose', 'why-change'] as const) {
      expect(of(code).length, code).toBeGreaterThan(5);
    }
    for (const { title, lines } of parts) for (const line of lines) holdsNoCode(line, `${title}: ${line}`);
    // what it says stands beside it, and is not said twice
    expect(JSON.stringify(parts)).not.toContain(PLAN_RULE_SENTENCES[rule].text);
    expect(of('why-rule')).toContain(MARK_WORDS[mark].text);
    if (mark !== 'common-practice') expect(of('why-rule')).toContain(source);
    expect(of('why-whose')).toContain(`version ${version}`);
    // what no reason opens says so, and what one opens says that
    expect(of('why-sure')).toMatch(
      override === 'never' ? /no reason goes over it/ : /unless a clinician gives a reason/,
    );
    expect(/clinician gives a reason/.test(of('why-change'))).toBe(override !== 'never');
  }
});

test('what stands against a heel bone names where each leg is sore, and a leg that was not asked is told as that', () => {
  const [read] = planRuleWhy('insertion-step', { sore: { left: null, right: 'insertion' } });
  expect(read?.lines.slice(1)).toEqual(['left leg: not asked in this visit', 'right leg: the heel bone']);
});
