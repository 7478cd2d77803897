import type { DeclineReason } from '@surae/shared';

/** A proposal that the clinician declined in a visit, and why. */
export interface ProposalDeclined {
  /** what proposed it, as a line of a plan names it: rule, version, mark and leg */
  readonly proposedBy: string;
  readonly reason: DeclineReason;
}

/** The clinician declined a proposal; without a reason an earlier answer to the same one is taken back. */
export interface ProposalDeclinedEvent {
  readonly kind: 'proposal-declined';
  readonly proposedBy: string;
  readonly reason: DeclineReason | null;
}

/** What stays declined after one more answer: of one proposal the newest counts. */
export function afterDecline(
  before: readonly ProposalDeclined[] | undefined,
  { proposedBy, reason }: ProposalDeclinedEvent,
): readonly ProposalDeclined[] {
  const others = (before ?? []).filter((one) => one.proposedBy !== proposedBy);
  return reason === null ? others : [...others, { proposedBy, reason }];
}
