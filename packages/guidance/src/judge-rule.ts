import type { FactEntry, GuidanceRule } from '@surae/shared';
import { type Answer, answersFor } from './answer-of.ts';
import type { GivenFacts, KnownFact, Leg } from './given-facts.ts';
import { GuidanceError } from './guidance-error.ts';
import { factsOf, type Judged, judgeCondition } from './judge-condition.ts';

/** An answer that a rule rests on. */
export interface FactUsed {
  readonly fact: string;
  readonly answer: KnownFact;
}

/** A missing answer that a rule took to be its stand-in. */
export interface TreatedAs {
  readonly fact: string;
  readonly as: string;
  /** why it is missing */
  readonly missing: string;
}

/** How a rule was judged for a leg, or for the person. */
export interface RuleTrace extends Judged {
  readonly rule: GuidanceRule;
  readonly leg: Leg | null;
  readonly used: readonly FactUsed[];
  readonly treatedAs: readonly TreatedAs[];
}

/** Facts by their code. */
export type FactTable = ReadonlyMap<string, FactEntry>;

/** A table of facts; the last one of a code stands. */
export function factTable(facts: readonly FactEntry[]): FactTable {
  return new Map(facts.map((one) => [one.code, one]));
}

/**
 * Judges one rule on answers that are looked up already.
 *
 * @param rule - see {@link GuidanceRule} [-]
 * @param leg - for which leg; null for the person [-]
 * @param answers - see {@link answersFor} [unit of the fact]
 * @param facts - every fact that the rule asks about [-]
 * @returns verdict, the answers used, and what is missing or was treated as something [-]
 * @throws {@link GuidanceError} `unknown-fact` for one that has no answer, not even a missing one
 *
 * Source: ours
 */
export function judgeOn(
  rule: GuidanceRule,
  leg: Leg | null,
  answers: ReadonlyMap<string, Answer>,
  facts: FactTable,
): RuleTrace {
  const used: FactUsed[] = [];
  const treatedAs: TreatedAs[] = [];
  const asked = factsOf(rule.when);
  for (const fact of asked) {
    const answer = answers.get(fact);
    if (answer === undefined) throw new GuidanceError('unknown-fact', { fact, rule: rule.id });
    if (!('missing' in answer)) {
      used.push({ fact, answer });
    } else if (rule.standIns?.includes(fact) === true) {
      const as = facts.get(fact)?.standIn ?? null;
      if (as !== null) treatedAs.push({ fact, as, missing: answer.missing });
    }
  }
  const ground = treatedAs.length === 0 ? answers : withStandIns(asked, answers, treatedAs);
  const { held, missing, between } = judgeCondition(rule.when, { answers: ground, numbers: rule.numbers });
  return { held, missing, between, rule, leg, used, treatedAs };
}

function withStandIns(
  asked: readonly string[],
  answers: ReadonlyMap<string, Answer>,
  treatedAs: readonly TreatedAs[],
): ReadonlyMap<string, Answer> {
  const ground = new Map(asked.map((fact) => [fact, answers.get(fact)!] as const));
  for (const { fact, as } of treatedAs) ground.set(fact, { value: as, from: { what: 'stand-in', day: null } });
  return ground;
}

/** Judges one rule on what is known; see {@link judgeOn} and {@link answersFor}. */
export function judgeRule(rule: GuidanceRule, leg: Leg | null, given: GivenFacts, facts: FactTable): RuleTrace {
  return judgeOn(rule, leg, answersFor(leg, given, facts.values()), facts);
}
