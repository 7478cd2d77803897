import type { ReturnCriterion } from '@surae/shared';
import { type Answer, answersFor } from '../answer-of.ts';
import type { GivenFact, GivenFacts, Leg } from '../given-facts.ts';
import { GuidanceError } from '../guidance-error.ts';
import { factsOf, judgeCondition } from '../judge-condition.ts';
import type { FactTable, FactUsed } from '../judge-rule.ts';
import { allHold, anyHolds, doesNotHold, type Held } from '../verdict.ts';

/** How a criterion stands for a leg. */
export interface CriterionTrace {
  readonly criterion: ReturnCriterion;
  /** cannot tell counts as not met, and is shown as what it is */
  readonly held: Held;
  /** whether it is asked for at all; `no` is no part of the list */
  readonly applies: Held;
  readonly used: readonly FactUsed[];
  /** facts that would settle it, since nothing is known of them, or since their bounds lie on both sides of a number */
  readonly missing: readonly string[];
  readonly between: readonly string[];
}

/** How a list of criteria stands for a leg. */
export interface CriteriaTrace {
  readonly leg: Leg;
  readonly held: Held;
  /** met where every criterion that is asked for is: what cannot be told is not */
  readonly isMet: boolean;
  readonly criteria: readonly CriterionTrace[];
}

function judgeOne(criterion: ReturnCriterion, answers: ReadonlyMap<string, Answer>): CriterionTrace {
  const { when, applies, numbers } = criterion;
  const codes = [...new Set([...factsOf(when), ...(applies === undefined ? [] : factsOf(applies))])];
  const used = codes.flatMap((fact): FactUsed[] => {
    const answer = answers.get(fact);
    if (answer === undefined) throw new GuidanceError('unknown-fact', { fact, criterion: criterion.code });
    return 'missing' in answer ? [] : [{ fact, answer }];
  });
  const met = judgeCondition(when, { answers, numbers });
  const asked = applies === undefined ? null : judgeCondition(applies, { answers, numbers });
  const held = asked === null ? met.held : anyHolds([doesNotHold(asked.held), met.held]);
  const open = held === 'cannot-tell' ? [met, ...(asked === null ? [] : [asked])] : [];
  return {
    criterion,
    held,
    applies: asked?.held ?? 'yes',
    used,
    missing: [...new Set(open.flatMap(({ missing }) => missing))],
    between: [...new Set(open.flatMap(({ between }) => between))],
  };
}

/**
 * How a list of criteria stands for a leg, each with what would settle it where it cannot be told.
 *
 * @param criteria - such as `START_RUNNING` or `FULL_RETURN` [-]
 * @param leg - which leg [-]
 * @param given - what is known [unit of the fact]
 * @param facts - every fact that they ask about [-]
 * @returns three-valued, each and together [-]
 * @throws {@link GuidanceError} `not-an-answer`, `unknown-fact`, `unknown-number`
 *
 * Source: ours; each criterion has its own
 */
export function judgeCriteria(
  criteria: readonly ReturnCriterion[],
  leg: Leg,
  given: GivenFacts,
  facts: FactTable,
): CriteriaTrace {
  const answers = answersFor(leg, given, facts.values());
  const traces = criteria.map((one) => judgeOne(one, answers));
  const held = allHold(traces.map((one) => one.held));
  return { leg, held, isMet: held === 'yes', criteria: traces };
}

/** The answer to the fact that stands for a whole list: what cannot be told is missing, and never no. Source: ours. */
export function criteriaFact({ held }: CriteriaTrace, day: string | null): GivenFact {
  if (held === 'cannot-tell') return { missing: 'cannot-tell' };
  return { value: held, from: { what: 'criteria', day } };
}
