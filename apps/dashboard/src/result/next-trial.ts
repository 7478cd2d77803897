import type { AnotherReason, PullReport } from '@surae/analysis';
import type { PullProtocol } from '@surae/shared';

/** What comes after the trials so far. */
export type NextTrial =
  /** another one is asked for, and why */
  | { readonly kind: 'another'; readonly why: AnotherReason }
  /** another one would be asked for, but the protocol has a greatest number */
  | { readonly kind: 'most-reached'; readonly why: AnotherReason }
  /** nothing more is asked for */
  | { readonly kind: 'enough' };

/** Whether the trials so far are enough; without a report nothing was accepted yet. */
export function nextTrial(
  report: Pick<PullReport, 'trials'> | null,
  { leastTrials }: PullProtocol['parameters'],
): NextTrial {
  const trials = report?.trials ?? null;
  if (trials === null) return (leastTrials.value ?? 0) > 0 ? { kind: 'another', why: 'too-few' } : { kind: 'enough' };
  const [why] = trials.another;
  if (why === undefined) return { kind: 'enough' };
  return { kind: trials.mayRepeat ? 'another' : 'most-reached', why };
}
