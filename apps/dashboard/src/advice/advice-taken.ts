import type { PlanItem, ProposalDeclined, Visit } from '@surae/casebook';
import type { AdviceCard } from './advice-cards.ts';
import { proposedByOf } from './proposed-by.ts';

/** What became of a proposal. */
export type AdviceAnswer = 'open' | 'taken' | 'changed';

/** Whether a line of a plan came from a proposal: what is done with both legs may have come from that of the other leg. */
export function isFrom({ lines }: Pick<AdviceCard, 'lines'>, item: PlanItem): boolean {
  const by = proposedByOf(item.proposedBy);
  return lines.some((line) => {
    if (line.code !== item.code) return false;
    if (line.proposedBy === item.proposedBy) return true;
    return line.side === 'both' && item.side === 'both' && by?.rule === proposedByOf(line.proposedBy)?.rule;
  });
}

/** What became of a proposal, by the plan as it is being written. */
export function answerTo(card: Pick<AdviceCard, 'lines'>, items: readonly PlanItem[]): AdviceAnswer {
  const from = items.filter((one) => one.proposedBy !== null && isFrom(card, one));
  if (from.length === 0) return 'open';
  return from.some(({ decision }) => decision === 'changed') ? 'changed' : 'taken';
}

/** The answer that declined a proposal in a visit; undefined where it was not declined. */
export function declineOf(
  { proposedBy }: Pick<AdviceCard, 'proposedBy'>,
  { declined = [] }: Pick<Visit, 'declined'>,
): ProposalDeclined | undefined {
  return declined.find((one) => one.proposedBy === proposedBy);
}
