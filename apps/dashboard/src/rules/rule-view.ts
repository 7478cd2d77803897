import { boundOf, factsOf } from '@surae/guidance';
import {
  GUIDANCE_FACTS,
  GUIDANCE_RULES,
  GUIDANCE_VARIABLES,
  type GuidanceRule,
  type GuidanceVariable,
  type NumberBound,
  OWN_NUMBER_WHY,
  RULE_GROUP_WORDS,
  RULES_WORDS,
  type RuleEdit,
  type RuleNumber,
  SAFETY_LIST,
  TOUCH_WORDS,
} from '@surae/shared';
import { changedByWords, factWords, markWords, numberName, numberText, ruleWords } from '../advice/why-words.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { type ConditionLine, conditionLines, valueWords } from './condition-words.ts';

/** A number of a rule, as it is read and changed. */
export interface NumberView {
  readonly id: string;
  readonly name: string;
  readonly unit: string;
  /** as it counts [unit] */
  readonly value: number;
  readonly published: number;
  /** what is said of it, the published one first */
  readonly lines: readonly string[];
  /** how it may be changed; null where it stays as it is */
  readonly bound: NumberBound | null;
  /** rules that hold it */
  readonly inRules: number;
  readonly isOwn: boolean;
}

/** A rule in plain words. */
export interface RuleView {
  readonly code: string;
  readonly title: string;
  /** that it is this clinic's own; empty where it stands as published */
  readonly own: readonly string[];
  readonly asks: readonly string[];
  readonly condition: ConditionLine;
  /** what it stands against, and what comes before it; empty where neither is so */
  readonly also: readonly string[];
  readonly source: string;
  readonly numbers: readonly NumberView[];
  readonly changedBy: string;
}

/** Rules about one thing. */
export interface RuleGroup {
  readonly about: GuidanceVariable;
  readonly title: string;
  readonly rules: readonly GuidanceRule[];
}

/** Rules by what they are about, in the order in which they are judged; what no rule is about is left out. */
export function ruleGroups(rules: readonly GuidanceRule[]): readonly RuleGroup[] {
  return (Object.keys(GUIDANCE_VARIABLES) as GuidanceVariable[])
    .map((about) => ({
      about,
      title: RULE_GROUP_WORDS[about].text,
      rules: rules.filter((one) => one.about === about),
    }))
    .filter((group) => group.rules.length > 0);
}

function publishedNumber(id: string): RuleNumber | undefined {
  return GUIDANCE_RULES.flatMap((rule) => Object.values(rule.numbers)).find((one) => one.id === id);
}

function ownLine(held: RuleNumber, { by, day, reason }: RuleEdit): string {
  const value = numberText(held.value, held.unit);
  return fill(RULES_WORDS['number-own'], { value, by, day: dayOf(day), reason: reason ?? '' });
}

function numberView(name: string, held: RuleNumber, rule: GuidanceRule): NumberView {
  const published = publishedNumber(held.id) ?? held;
  const bound = boundOf(held.id);
  const inRules = GUIDANCE_RULES.filter((one) => Object.values(one.numbers).some(({ id }) => id === held.id)).length;
  const edit = rule.edits?.findLast((one) => one.number === name);
  const { source, mark, unit } = published;
  const told = { value: numberText(published.value, unit), source, mark: markWords(mark) };
  return {
    id: held.id,
    name: numberName(held.id, name, rule),
    unit,
    value: held.value,
    published: published.value,
    lines: [
      fill(RULES_WORDS[mark === 'common-practice' ? 'number-practice' : 'number-published'], told),
      ...(edit === undefined ? [] : [ownLine(held, edit)]),
      ...(typeof bound === 'string' ? [fill(RULES_WORDS.stays, { why: OWN_NUMBER_WHY[bound].text })] : []),
      ...(typeof bound !== 'string' && inRules > 1 ? [fill(RULES_WORDS['number-in-rules'], { count: inRules })] : []),
    ],
    bound: typeof bound === 'string' ? null : bound,
    inRules,
    isOwn: edit !== undefined,
  };
}

function asksOf({ when, standIns = [] }: GuidanceRule): readonly string[] {
  const asked = factsOf(when);
  if (asked.length === 0) return [RULES_WORDS['asks-nothing'].text];
  return asked.map((code) => {
    const as = standIns.includes(code) ? (GUIDANCE_FACTS.find((one) => one.code === code)?.standIn ?? null) : null;
    return as === null
      ? factWords(code)
      : `${factWords(code)}. ${fill(RULES_WORDS['stand-in'], { as: valueWords(as) })}`;
  });
}

function alsoOf({ proposes, follows }: GuidanceRule): readonly string[] {
  const against = proposes.blocks ?? [];
  const first = GUIDANCE_RULES.find(
    (one) => follows !== undefined && one.about === follows.about && one.proposes.code === follows.code,
  );
  return [
    ...(against.length === 0
      ? []
      : [fill(RULES_WORDS['stands-against'], { what: against.map((one) => TOUCH_WORDS[one].text).join(', ') })]),
    ...(first === undefined ? [] : [fill(RULES_WORDS.follows, { what: ruleWords(first) })]),
  ];
}

/** What a rule proposes; rules that say the same of many lines of the safety list begin with the line. */
function titleOf(rule: GuidanceRule): string {
  const isLine = SAFETY_LIST.some(({ id }) => id === rule.proposes.code) && rule.of === 'person';
  return isLine ? `${factWords(rule.proposes.code)} ${ruleWords(rule)}` : ruleWords(rule);
}

/**
 * A rule in plain words: what it asks, where it holds, what it proposes, where it is from, its numbers, and what would change it.
 *
 * @param rule - as it counts in the clinic [-]
 * @returns see {@link RuleView} [-]
 *
 * Source: ours; each rule has its own source
 */
export function ruleView(rule: GuidanceRule): RuleView {
  const { code, source, mark, edits = [] } = rule;
  const numbers = Object.entries(rule.numbers).map(([name, held]) => numberView(name, held, rule));
  return {
    code,
    title: titleOf(rule),
    own: edits.map(({ number, was, day }) => {
      const held = rule.numbers[number];
      const unit = held?.unit ?? '1';
      return fill(RULES_WORDS['own-line'], {
        number: numberName(held?.id ?? number, number, rule),
        value: numberText(held?.value ?? was, unit),
        was: numberText(was, unit),
        day: dayOf(day),
      });
    }),
    asks: asksOf(rule),
    condition: conditionLines(rule),
    also: alsoOf(rule),
    source:
      mark === 'common-practice'
        ? markWords(mark)
        : fill(RULES_WORDS['source-line'], { source, mark: markWords(mark) }),
    numbers,
    changedBy: changedByWords(rule),
  };
}
