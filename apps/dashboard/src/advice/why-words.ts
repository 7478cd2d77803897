import { factsOf, type Guidance, type KnownFact, type Leg, type RuleTrace } from '@surae/guidance';
import {
  ADVICE_FROM_WORDS,
  ADVICE_MISSING_WORDS,
  ADVICE_VALUE_WORDS,
  ADVICE_WORDS,
  type EvidenceMark,
  GUIDANCE_CHANGED_BY,
  GUIDANCE_FACT_WORDS,
  GUIDANCE_FACTS,
  GUIDANCE_SENTENCES,
  GUIDANCE_SETTLED_BY,
  type GuidanceRule,
  MARK_WORDS,
  RULE_NUMBER_WORDS,
  type RuleEdit,
  type RuleNumber,
  SAFETY_LIST,
  type Sentence,
} from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { entryWords } from '../words/entry-words.ts';
import { fill } from '../words/fill.ts';
import { painBasis, withPain } from './pain-words.ts';

type Words = Readonly<Record<string, Sentence>>;

function textOf(words: Words, code: string): string {
  return Object.hasOwn(words, code) ? words[code]!.text : code;
}

function lineOf(code: string): (typeof SAFETY_LIST)[number] | undefined {
  return SAFETY_LIST.find(({ id }) => id === code);
}

/** A number as it counts: a clinic may change one by a twentieth, so that one digit behind the point is too few. */
function digitsOf(value: number): string {
  return String(Number(value.toFixed(2)));
}

function filled(words: Words, code: string, rule: GuidanceRule): string {
  const numbers = Object.entries(rule.numbers).map(([name, { value }]) => [name, digitsOf(Math.abs(value))] as const);
  const line = lineOf(rule.proposes.code);
  const next = line === undefined ? '' : entryWords(line, 'next');
  return fill({ text: textOf(words, code) }, { ...Object.fromEntries(numbers), next });
}

/** What a rule proposes, in words. */
export function ruleWords(rule: GuidanceRule): string {
  return filled(GUIDANCE_SENTENCES, rule.sentence, rule);
}

/** What would change it. */
export function changedByWords(rule: GuidanceRule): string {
  return filled(GUIDANCE_CHANGED_BY, rule.changedBy, rule);
}

/** What a fact is. */
export function factWords(code: string): string {
  const line = lineOf(code);
  return line === undefined ? textOf(GUIDANCE_FACT_WORDS, code) : entryWords(line, 'ask');
}

function settledWords(code: string): string {
  return textOf(GUIDANCE_SETTLED_BY, lineOf(code) === undefined ? code : 'line');
}

/** Why an answer is missing. */
export function missingWords(why: string): string {
  return textOf(ADVICE_MISSING_WORDS, why);
}

/** A number with its unit. */
export function numberText(value: number, unit: string): string {
  const told = digitsOf(value);
  if (unit === '1') return told;
  const words: Words = ADVICE_WORDS;
  return fill(words[`unit-${unit}`] ?? ADVICE_WORDS['fact-unit'], { value: told, unit });
}

/** An answer with its bounds. */
export function answerWords(code: string, { value, low, high }: KnownFact): string {
  if (typeof value === 'string') return textOf(ADVICE_VALUE_WORDS, value);
  const unit = GUIDANCE_FACTS.find((one) => one.code === code)?.unit ?? '1';
  const told = numberText(value, unit);
  if (low === undefined || high === undefined || (low === value && high === value)) return told;
  if (high === Number.POSITIVE_INFINITY) return fill(ADVICE_WORDS['fact-least'], { value: numberText(low, unit) });
  return fill(ADVICE_WORDS['fact-bounds'], { value: told, low: digitsOf(low), high: digitsOf(high) });
}

/** Where an answer is from. */
export function fromWords({ from }: KnownFact, visitId: string): string {
  const what = textOf(ADVICE_FROM_WORDS, from.what);
  if (from.visitId === visitId) return fill(ADVICE_WORDS['from-this-visit'], { what });
  return from.day === null ? what : fill(ADVICE_WORDS['from-day'], { what, day: dayOf(from.day) });
}

/** How well something is supported. */
export function markWords(mark: EvidenceMark): string {
  return MARK_WORDS[mark].text;
}

/** One part of why. */
export interface WhyPart {
  readonly title: string;
  readonly lines: readonly string[];
}

/** What was read of an answer, and that it is a grade where it is one. */
function gradedWords(code: string, line: string): string {
  const entry = GUIDANCE_FACTS.find((one) => one.code === code);
  if (entry?.graded !== true) return line;
  const { source, mark } = entry;
  const words = ADVICE_WORDS[mark === 'common-practice' ? 'fact-graded-practice' : 'fact-graded'];
  return fill(words, { line, source, mark: markWords(mark) });
}

function factLines(traces: readonly RuleTrace[], visitId: string): readonly string[] {
  const words = ADVICE_WORDS;
  const used = traces.flatMap((trace) =>
    trace.used.map(({ fact, answer }) =>
      gradedWords(
        fact,
        withPain(
          fact,
          answer,
          fill(words['fact-line'], {
            fact: factWords(fact),
            value: answerWords(fact, answer),
            from: fromWords(answer, visitId),
          }),
        ),
      ),
    ),
  );
  const treated = traces.flatMap((trace) =>
    trace.treatedAs.map(({ fact, as, missing }) =>
      fill(words['why-treated'], {
        fact: factWords(fact),
        why: missingWords(missing),
        as: textOf(ADVICE_VALUE_WORDS, as),
      }),
    ),
  );
  const all = [...new Set([...used, ...treated, ...painBasis(traces)])];
  return all.length === 0 ? [words['why-nothing'].text] : all;
}

/** What a number is called: its own name, or where it is only held against an answer, that it is a number of it. */
export function numberName(id: string, name: string, rule: GuidanceRule): string {
  if (Object.hasOwn(RULE_NUMBER_WORDS, id)) return textOf(RULE_NUMBER_WORDS, id);
  const fact = factHeldAgainst(rule.when, name);
  return fact === null ? name : factWords(fact);
}

function factHeldAgainst(when: GuidanceRule['when'], name: string): string | null {
  if ('all' in when || 'any' in when) {
    const parts = 'all' in when ? when.all : when.any;
    return parts.map((one) => factHeldAgainst(one, name)).find((one) => one !== null) ?? null;
  }
  if ('not' in when) return factHeldAgainst(when.not, name);
  if ('is' in when || 'oneOf' in when) return null;
  return Object.values(when).includes(name) ? when.fact : null;
}

/** Numbers of one rule that have one source, each as it is. */
function numberLines(rule: GuidanceRule): readonly string[] {
  const bySource = new Map<string, { readonly one: RuleNumber; readonly values: string[] }>();
  for (const [name, one] of Object.entries(rule.numbers)) {
    const key = `${one.source} ${one.mark}`;
    const called = numberName(one.id, name, rule);
    const told = fill(ADVICE_WORDS['number-named'], { value: numberText(one.value, one.unit), name: called });
    const found = bySource.get(key);
    if (found === undefined) bySource.set(key, { one, values: [told] });
    else if (!found.values.includes(told)) found.values.push(told);
  }
  return [...bySource.values()].map(({ one: { source, mark }, values }) => {
    const told = { values: values.join(', '), source, mark: markWords(mark) };
    // what says that it has no source does not say so twice
    return fill(ADVICE_WORDS[mark === 'common-practice' ? 'practice-line' : 'number-line'], told);
  });
}

function ruleLines(rules: readonly GuidanceRule[]): readonly string[] {
  const lines = rules.flatMap((rule) => {
    const { source, mark } = rule;
    const told = { rule: ruleWords(rule), source, mark: markWords(mark) };
    return [fill(ADVICE_WORDS[mark === 'common-practice' ? 'rule-practice' : 'rule-line'], told), ...numberLines(rule)];
  });
  return [...new Set(lines)];
}

/** What is missing, or lies on both sides of a number, and what would settle each. */
export function lackingOf(
  missing: readonly string[],
  between: readonly string[],
  why: (fact: string) => string,
): readonly string[] {
  const words = ADVICE_WORDS;
  return [
    ...missing.map((fact) =>
      fill(words['lacking-line'], {
        fact: factWords(fact),
        why: missingWords(why(fact)),
        settled: settledWords(fact),
      }),
    ),
    ...between.map((fact) => fill(words['between-line'], { fact: factWords(fact), settled: settledWords(fact) })),
  ];
}

/** What is missing of traces that could not be told, and what would settle each. */
export function lackingLines(traces: readonly RuleTrace[], why: (fact: string) => string): readonly string[] {
  return [...new Set(traces.flatMap(({ missing, between }) => lackingOf(missing, between, why)))];
}

/** A number that a clinic changed in a rule: what it is, what it says now, and what is published. */
function editTold(
  { numbers }: GuidanceRule,
  { number, was, day }: RuleEdit,
): { readonly number: string; readonly value: string; readonly was: string; readonly day: string } {
  const held = numbers[number];
  const unit = held?.unit ?? '1';
  return {
    number: textOf(RULE_NUMBER_WORDS, held?.id ?? number),
    value: numberText(held?.value ?? was, unit),
    was: numberText(was, unit),
    day: dayOf(day),
  };
}

/** That rules are a clinic's own, said where what they propose is shown; empty where all stand as published. */
export function editedLines(rules: readonly GuidanceRule[]): readonly string[] {
  const lines = rules.flatMap((rule) =>
    (rule.edits ?? []).map((edit) => fill(ADVICE_WORDS['edited-card'], editTold(rule, edit))),
  );
  return [...new Set(lines)];
}

function whose(rules: readonly GuidanceRule[]): readonly string[] {
  const edits = rules.flatMap((rule) =>
    (rule.edits ?? []).map((edit) =>
      fill(ADVICE_WORDS.edited, {
        ...editTold(rule, edit),
        by: edit.by,
        reason: edit.reason ?? ADVICE_WORDS['no-reason'].text,
      }),
    ),
  );
  const versions = [...new Set(rules.map(({ version }) => version))].join(', ');
  return edits.length > 0 ? [...new Set(edits)] : [fill(ADVICE_WORDS.ours, { version: versions })];
}

/** What an explanation is made of. */
export interface WhyGround {
  readonly leg: Leg;
  readonly visitId: string;
  readonly guidance: Guidance;
  /** the rule that is proposed, and those that it stands on; none where nothing is proposed */
  readonly fired: readonly RuleTrace[];
  /** what could not be told and matters for it */
  readonly lacking: readonly RuleTrace[];
  /** lines that were held back, in words */
  readonly held: readonly string[];
  readonly sure: string;
  /** the six answers that irritability is graded by, in words; none where the leg is not sore */
  readonly irritability?: readonly string[];
  /** why a fact of the leg or of the person is missing */
  readonly missing: (fact: string) => string;
}

/** The answers behind the grade, wherever a rule of it reads the grade, or lacks it. */
function irritableLines({ fired, lacking, irritability = [] }: WhyGround): readonly string[] {
  const reads = [...fired, ...lacking].some(({ rule }) => factsOf(rule.when).includes('irritability'));
  return reads ? irritability : [];
}

function blockedLines({ guidance, leg, held }: WhyGround): readonly string[] {
  const blocked = guidance.blocked
    .filter(({ trace }) => trace.leg === leg)
    .map(({ trace, by }) =>
      fill(ADVICE_WORDS['blocked-line'], {
        what: ruleWords(trace.rule),
        by: [...new Set(by.map(({ rule }) => ruleWords(rule)))].join(' '),
      }),
    );
  const all = [...held, ...blocked];
  return all.length === 0 ? [ADVICE_WORDS['why-nothing-blocked'].text] : all;
}

/**
 * Why something is proposed: what was read, the answers behind a grade, which rules hold with their source, what was held back and by what, what is lacking and what
 * would settle it, how sure, whose rule it is, and what would change it.
 */
export function whyParts(ground: WhyGround): readonly WhyPart[] {
  const words = ADVICE_WORDS;
  const { fired, lacking, visitId, sure, missing } = ground;
  const rules = fired.map(({ rule }) => rule);
  const open = lackingLines(lacking, missing);
  const irritable = irritableLines(ground);
  const parts: readonly (WhyPart | null)[] = [
    fired.length === 0 ? null : { title: words['why-from'].text, lines: factLines(fired, visitId) },
    irritable.length === 0 ? null : { title: words['why-irritable'].text, lines: irritable },
    fired.length === 0 ? null : { title: words['why-rule'].text, lines: ruleLines(rules) },
    { title: words['why-blocked'].text, lines: blockedLines(ground) },
    {
      title: words['why-lacking'].text,
      lines: open.length === 0 ? [words['why-nothing-lacking'].text] : open,
    },
    { title: words['why-sure'].text, lines: [sure] },
    fired.length === 0 ? null : { title: words['why-whose'].text, lines: whose(rules) },
    fired.length === 0 ? null : { title: words['why-change'].text, lines: [...new Set(rules.map(changedByWords))] },
  ];
  return parts.filter((one) => one !== null);
}
