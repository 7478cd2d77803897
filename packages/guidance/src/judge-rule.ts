import type { FactEntry, GuidanceRule } from '@surae/shared';
import { type Answer, answerOf } from './answer-of.ts';
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
 * Judges one rule.
 *
 * @param rule - see {@link GuidanceRule} [-]
 * @param leg - for which leg; null for the person [-]
 * @param given - what is known [unit of the fact]
 * @param facts - every fact that the rule asks about [-]
 * @returns verdict, the answers used, and what is missing or was treated as something [-]
 * @throws {@link GuidanceError} `unknown-fact` for one that is not in the table; see {@link answerOf}
 *
 * Source: ours
 */
export function judgeRule(rule: GuidanceRule, leg: Leg | null, given: GivenFacts, facts: FactTable): RuleTrace {
  const answers: Record<string, Answer> = {};
  const used: FactUsed[] = [];
  const treatedAs: TreatedAs[] = [];
  for (const fact of factsOf(rule.when)) {
    const entry = facts.get(fact);
    if (entry === undefined) throw new GuidanceError('unknown-fact', { fact, rule: rule.id });
    const answer = answerOf(entry, leg, given);
    answers[fact] = answer;
    if (!('missing' in answer)) {
      used.push({ fact, answer });
    } else if (entry.standIn !== null && rule.standIns?.includes(fact) === true) {
      answers[fact] = { value: entry.standIn, from: { what: 'stand-in', day: null } };
      treatedAs.push({ fact, as: entry.standIn, missing: answer.missing });
    }
  }
  return { ...judgeCondition(rule.when, { answers, numbers: rule.numbers }), rule, leg, used, treatedAs };
}
