import type { PlanFacts } from '@surae/casebook';
import {
  ADVICE_VALUE_WORDS,
  ADVICE_WORDS,
  MARK_WORDS,
  PLAN_RULE_CHANGED_BY,
  PLAN_RULE_READS,
  PLAN_RULES,
  PLAN_WORDS,
  type PlanRuleCode,
  SORENESS_WORDS,
} from '@surae/shared';
import type { WhyPart } from '../advice/why-words.ts';
import { fill } from '../words/fill.ts';

/** What the rule looked at in this visit. */
function readLines(rule: PlanRuleCode, { sore }: Pick<PlanFacts, 'sore'>): readonly string[] {
  const reads = PLAN_RULE_READS[rule].text;
  if (!rule.startsWith('insertion-')) return [reads];
  const legs = (['left', 'right'] as const).map((side) => {
    const where = sore[side];
    const value =
      where === null
        ? PLAN_RULE_READS['not-asked'].text
        : where === 'no'
          ? SORENESS_WORDS.no.text
          : ADVICE_VALUE_WORDS[where].text;
    return fill(PLAN_RULE_READS.leg, { leg: PLAN_WORDS[side].text, where: value });
  });
  return [reads, ...legs];
}

/**
 * Why a rule stands against a line of a plan, beside what it says: what it read, where it is from, how sure, whose it is and what would change it.
 *
 * @param rule - its code [-]
 * @param facts - what is known in the visit [-]
 * @returns parts with a heading, none of them empty [-]
 *
 * Source: ours; each rule has its own
 */
export function planRuleWhy(rule: PlanRuleCode, facts: Pick<PlanFacts, 'sore'>): readonly WhyPart[] {
  const words = ADVICE_WORDS;
  const { source, mark, version, override } = PLAN_RULES[rule];
  const told = { source, mark: MARK_WORDS[mark].text };
  // the rule itself stands beside it
  const basis = mark === 'common-practice' ? told.mark : fill(words['note-basis'], told);
  return [
    { title: words['why-from'].text, lines: readLines(rule, facts) },
    { title: words['why-rule'].text, lines: [basis] },
    {
      title: words['why-sure'].text,
      lines: [PLAN_RULE_READS[override === 'never' ? 'sure-never' : 'sure-reason'].text],
    },
    { title: words['why-whose'].text, lines: [fill(words['points-ours'], { version })] },
    { title: words['why-change'].text, lines: [PLAN_RULE_CHANGED_BY[rule].text] },
  ];
}
