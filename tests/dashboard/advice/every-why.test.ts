import { type GivenFact, judgeRule, propose, type RuleTrace } from '@surae/guidance';
import {
  ADVICE_VALUE_WORDS,
  ADVICE_WORDS,
  GUIDANCE_FACTS,
  GUIDANCE_RULES,
  type GuidanceRule,
  MARK_WORDS,
} from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { whyParts } from '../../../apps/dashboard/src/advice/why-words.ts';
import { known, madeFacts } from '../../support/guidance-facts.ts';
import { holdsNoCode } from '../../support/no-code.ts';
import { factEntries, type Told, waysOf } from '../../support/rule-ways.ts';

/** Answers as if told in the history on a day, each to its leg or the person. */
function factsOf(told: Readonly<Record<string, GivenFact>>) {
  const of = (which: 'leg' | 'person') =>
    Object.fromEntries(Object.entries(told).filter(([fact]) => factEntries.get(fact)?.of === which));
  return madeFacts(of('leg'), {}, of('person'));
}

function explained(rule: GuidanceRule, told: Told, missing: Readonly<Record<string, GivenFact>> = {}) {
  const answers = Object.fromEntries(
    Object.entries(told).map(([fact, value]) => [
      fact,
      { ...known(value), from: { what: 'history', day: '2026-03-01' } },
    ]),
  );
  const given = factsOf({ ...answers, ...missing });
  const trace = judgeRule(rule, rule.of === 'leg' ? 'left' : null, given, factEntries);
  const own: RuleTrace[] = trace.held === 'cannot-tell' ? [trace] : [];
  const guidance = propose(given, [rule], GUIDANCE_FACTS);
  const sure = ADVICE_WORDS[trace.held === 'yes' ? 'stands' : 'waits'].text;
  const parts = whyParts({
    leg: 'left',
    visitId: 'v',
    guidance,
    fired: [trace],
    lacking: own,
    held: [],
    sure,
    missing: () => 'not-asked',
  });
  const of = (code: keyof typeof ADVICE_WORDS): string =>
    (parts.find(({ title }) => title === ADVICE_WORDS[code].text)?.lines ?? []).join('\n');
  return { trace, parts, of };
}

// an answer whose words are left out would be shown as its code
const answers = GUIDANCE_FACTS.flatMap(({ code, holds }) =>
  holds.kind === 'code' ? holds.codes.map((answer) => [code, answer] as const) : [],
);
test.each(answers)('%s: %s has words', (_, answer) => {
  expect(Object.hasOwn(ADVICE_VALUE_WORDS, answer)).toBe(true);
});

describe('every rule answers why this, from what, how sure, whose rule, and what would change it', () => {
  test.each(GUIDANCE_RULES.map((rule) => [rule.code, rule] as const))('%s where it holds', (_, rule) => {
    const ways = waysOf(rule.when, rule);
    const held = ways.filter((told) => explained(rule, told).trace.held === 'yes');
    expect(held.length).toBeGreaterThan(0);
    for (const told of held.slice(0, 30)) {
      const { of, parts } = explained(rule, told);
      const why = of('why-rule');
      for (const code of ['why-rule', 'why-from', 'why-sure', 'why-whose', 'why-change'] as const) {
        expect(of(code).length, code).toBeGreaterThan(5);
      }
      for (const { title, lines } of parts) {
        expect(lines.length, title).toBeGreaterThan(0);
        for (const line of lines) holdsNoCode(line, `${title}: ${line}`);
      }
      // the source and how well it is supported, of the rule and of each of its numbers
      for (const { source, mark } of [rule, ...Object.values(rule.numbers)]) {
        expect(why).toContain(MARK_WORDS[mark].text);
        if (mark !== 'common-practice') expect(why).toContain(source);
      }
      // each number as it counts, and no rounded one
      for (const { value } of Object.values(rule.numbers)) {
        expect(why.match(/-?\d+(?:\.\d+)?/g)?.map(Number)).toContain(value);
      }
      // every answer that was read is told with its day
      expect(of('why-from').match(/1 Mar 2026/g)?.length ?? 0).toBeGreaterThanOrEqual(Object.keys(told).length);
    }
  });

  test.each(GUIDANCE_RULES.map((rule) => [rule.code, rule] as const))(
    '%s with each answer missing in turn: what is lacking is told with what would settle it, or as what it was taken',
    (_, rule) => {
      const [told] = waysOf(rule.when, rule).filter((one) => explained(rule, one).trace.held === 'yes');
      for (const fact of Object.keys(told)) {
        const without = Object.fromEntries(Object.entries(told).filter(([code]) => code !== fact));
        const { trace, of, parts } = explained(rule, without, { [fact]: { missing: 'not-asked' } });
        for (const { title, lines } of parts) for (const line of lines) holdsNoCode(line, `${title}: ${line}`);
        const isTaken = trace.treatedAs.some((one) => one.fact === fact);
        expect(isTaken, fact).toBe(rule.standIns?.includes(fact) === true);
        if (isTaken) expect(of('why-from')).toContain('so taken as');
        else if (trace.held === 'cannot-tell') {
          expect(trace.missing).toContain(fact);
          expect(of('why-lacking')).toContain('not asked in this visit');
        }
      }
    },
  );
});
