import { type FactEntry, GUIDANCE_VARIABLES, type GuidanceRule, type GuidanceVariable } from '@surae/shared';
import { answersFor } from './answer-of.ts';
import { type GivenFacts, LEGS } from './given-facts.ts';
import type { Blocked, Guidance, Proposed, Together } from './guidance.ts';
import { type FactTable, factTable, judgeOn, type RuleTrace } from './judge-rule.ts';
import { blocksAgainst } from './standing-blocks.ts';
import { nextTogether, takeTogether } from './take-together.ts';
import { weakestMark } from './weakest-mark.ts';

const variables = Object.keys(GUIDANCE_VARIABLES) as readonly GuidanceVariable[];

function judged(rules: readonly GuidanceRule[], given: GivenFacts, facts: FactTable): RuleTrace[] {
  const left = answersFor('left', given, facts.values());
  const right = answersFor('right', given, facts.values());
  const person = answersFor(null, given, facts.values());
  return rules.flatMap((rule) =>
    rule.of === 'leg'
      ? [judgeOn(rule, 'left', left, facts), judgeOn(rule, 'right', right, facts)]
      : judgeOn(rule, null, person, facts),
  );
}

function proposedBy(trace: RuleTrace, notRuledOut: readonly RuleTrace[]): Proposed {
  const { rule, leg, held } = trace;
  const standing = held === 'yes' && notRuledOut.length === 0 ? 'stands' : 'waits';
  return { about: rule.about, leg, rule, standing, trace, notRuledOut, mark: weakestMark(rule) };
}

/** What is taken of the rules about one variable, for one leg or for the person. */
interface Taken {
  readonly proposals: readonly Proposed[];
  readonly blocked: readonly Blocked[];
}

/** One rule: the lowest that holds. What only lies between two ranks goes to the lower one, and waits. */
function lowestOf(candidates: readonly RuleTrace[]): Proposed | null {
  const sorted = candidates.toSorted((one, other) => one.rule.rank - other.rule.rank);
  const open = sorted.filter(({ held }) => held === 'cannot-tell');
  const taken =
    sorted.find(({ held }) => held === 'yes') ??
    open.find(({ missing, between }) => missing.length === 0 && between.length > 0);
  if (taken === undefined) return null;
  return proposedBy(
    taken,
    open.filter((one) => one !== taken && one.rule.rank <= taken.rule.rank),
  );
}

function take(about: GuidanceVariable, candidates: readonly RuleTrace[], blocks: readonly RuleTrace[]): Taken {
  const standing = ({ rule, leg }: RuleTrace): readonly RuleTrace[] =>
    blocksAgainst(rule.proposes.touches, leg, blocks);
  const against = (trace: RuleTrace): Blocked => ({ trace, by: standing(trace) });
  const isOpen = (trace: RuleTrace): boolean => standing(trace).length === 0;
  const { choice } = GUIDANCE_VARIABLES[about];
  if (choice === 'lowest') {
    const taken = lowestOf(candidates);
    if (taken === null || isOpen(taken.trace)) return { proposals: taken === null ? [] : [taken], blocked: [] };
    return { proposals: [], blocked: [against(taken.trace)] };
  }
  const holding = candidates.filter(({ held }) => held === 'yes');
  const blocked = holding.filter((one) => !isOpen(one)).map(against);
  if (choice === 'each') return { proposals: holding.filter(isOpen).map((one) => proposedBy(one, [])), blocked };
  const taken = lowestOf(candidates.filter(isOpen));
  return { proposals: taken === null ? [] : [taken], blocked };
}

/** Whether something is proposed about a variable, and stands. */
function stands(
  taken: readonly Pick<Proposed, 'about' | 'rule' | 'standing'>[],
  { about, code }: NonNullable<GuidanceRule['follows']>,
): boolean {
  return taken.some((one) => one.about === about && one.rule.proposes.code === code && one.standing === 'stands');
}

/**
 * What is proposed for today, from facts and rules. Whatever cannot be ruled out and stands against something keeps it from being
 * proposed; a proposal that a missing answer could still make more careful waits and says for what.
 *
 * @param given - what is known [unit of the fact]
 * @param rules - without faults, see {@link ruleFaults} [-]
 * @param facts - every fact that the rules ask about [-]
 * @returns proposals with the answers they rest on, what is blocked and by which, what is lacking [-]
 * @throws {@link GuidanceError} `not-an-answer` for an answer that its fact cannot hold; `unknown-fact`, `unknown-number`
 *
 * Source: ours; each rule has its own source
 */
export function propose(given: GivenFacts, rules: readonly GuidanceRule[], facts: readonly FactEntry[]): Guidance {
  const traces = judged(rules, given, factTable(facts));
  const blocks = traces.filter(({ rule: { proposes }, held }) => {
    if (proposes.kind !== 'block') return false;
    return proposes.onlyWhereItHolds === true ? held === 'yes' : held !== 'no';
  });
  const proposing = traces.filter(({ rule }) => rule.proposes.kind !== 'block');
  const proposals: Proposed[] = [];
  const blocked: Blocked[] = [];
  const together: Together[] = [];
  for (const about of variables) {
    const follows = ({ rule: { follows: first }, leg }: RuleTrace): boolean =>
      first === undefined ||
      (stands(together, first) &&
        stands(
          proposals.filter((one) => one.leg === leg),
          first,
        ));
    const asked = proposing.filter((one) => one.rule.about === about && follows(one));
    for (const leg of [...LEGS, null]) {
      const taken = take(
        about,
        asked.filter((one) => one.leg === leg),
        blocks,
      );
      proposals.push(...taken.proposals);
      blocked.push(...taken.blocked);
    }
    const { across, choice } = GUIDANCE_VARIABLES[about];
    const isOpen = ({ rule, leg }: RuleTrace): boolean =>
      blocksAgainst(rule.proposes.touches, leg, blocks).length === 0;
    const ofBoth = (): Together | null =>
      choice === 'next' ? nextTogether(about, asked, isOpen, given) : takeTogether(about, proposals, blocked, given);
    const one = across ? ofBoth() : null;
    if (one !== null) together.push(one);
  }
  return {
    blocks,
    locked: blocks.some(({ rule }) => rule.proposes.blocks?.includes('loading') === true),
    proposals,
    together,
    blocked,
    lacking: traces.filter(({ held }) => held === 'cannot-tell'),
    edited: rules.filter(({ edits }) => edits !== undefined && edits.length > 0),
  };
}
