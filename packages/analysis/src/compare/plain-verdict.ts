import { requireRange } from '../check.ts';
import type { Verdict } from '../raises/criteria/finding.ts';

/** Probabilities up to which, and from which, an answer is plain. */
export interface PlainLimits {
  /** no up to this probability [-] */
  readonly plainNoMost: number;
  /** yes from this probability on [-] */
  readonly plainYesLeast: number;
}

/**
 * Verdict that a probability allows: between the limits it cannot be told.
 *
 * @param probability - 0 to 1 [-]
 * @param limits - see {@link PlainLimits} [-]
 * @returns yes, no or cannot tell [-]
 * @throws {@link InputError} `out-of-range` for a probability outside 0 to 1, or limits that cross
 *
 * Source: common practice, no source
 */
export function plainVerdict(probability: number, limits: PlainLimits): Verdict {
  const { plainNoMost, plainYesLeast } = limits;
  requireRange(probability, probability >= 0 && probability <= 1, 'probability', '0 to 1');
  requireRange(plainNoMost, plainNoMost >= 0 && plainNoMost < 0.5, 'plainNoMost', '0 <= limit < 0.5');
  requireRange(plainYesLeast, plainYesLeast > 0.5 && plainYesLeast <= 1, 'plainYesLeast', '0.5 < limit <= 1');
  if (probability >= plainYesLeast) return 'yes';
  return probability <= plainNoMost ? 'no' : 'cannot_tell';
}
