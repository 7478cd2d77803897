import { type PlanItem, planFacts, planOpenBlocks } from '@surae/casebook';
import { blocksAgainst, exerciseTouches, type Leg } from '@surae/guidance';
import type { LinesGround } from './advice-lines.ts';
import type { AdviceOption } from './advice-options.ts';
import { proposedByOf, proposedByText } from './proposed-by.ts';
import { editedLines, markWords, ruleWords } from './why-words.ts';

/** What is proposed for the other leg. */
export interface OtherLeg {
  readonly leg: Leg;
  readonly lines: readonly PlanItem[];
}

/**
 * For a leg that is not sore: what is proposed on one leg for the sore one, with the same dose. What is done with both legs goes by the
 * sore one anyway.
 *
 * @param leg - that is not sore [-]
 * @param other - what is proposed for the sore leg [-]
 * @param ground - see {@link LinesGround} [-]
 * @returns undefined where the rule is not proposed for the leg, or nothing is left to take over [-]
 *
 * Source: ours; that the sore leg sets the load and both are trained is common practice, no source
 */
export function asOtherLeg(leg: Leg, other: OtherLeg, { guidance, visit }: LinesGround): AdviceOption | undefined {
  const proposed = guidance.proposals.find((one) => one.rule.code === 'train-both' && one.leg === leg);
  const first = other.lines.find(({ side }) => side === other.leg);
  if (proposed === undefined || proposed.standing !== 'stands' || first === undefined) return undefined;
  const { rule, mark } = proposed;
  const by = proposedByText(rule, leg, proposedByOf(first.proposedBy)?.level ?? null);
  const facts = planFacts(visit);
  const lines = other.lines
    .filter(({ side }) => side === other.leg)
    .filter(({ code }) => code !== null && blocksAgainst(exerciseTouches(code), leg, guidance.blocks).length === 0)
    .map((line): PlanItem => ({ ...line, side: leg, goneOver: [], proposedBy: by, decision: 'accepted' }))
    .filter((line) => planOpenBlocks(line, facts).length === 0);
  if (lines.length === 0) return undefined;
  return {
    code: rule.code,
    proposedBy: by,
    title: ruleWords(rule),
    also: [markWords(mark), ...editedLines([rule])],
    lines,
  };
}
