import { requireRange } from '../check.ts';
import type { Verdict } from '../raises/criteria/finding.ts';

/**
 * Whether a change for the better is one that people call important, held against the confidence limits of a published figure.
 *
 * Above the upper limit it is, below the lower one it is not; between them, and where the source gives no limits, it cannot be
 * told. What is no change for the better is none whatever the limits: the figures are of getting better.
 *
 * @param better - how far a total moved towards its better end; below 0 is worse [unit of the total]
 * @param interval - lower and upper confidence limit of the published important change; null is not known [unit of the total]
 * @returns yes, no or cannot tell [-]
 * @throws {@link InputError} `out-of-range` for a change that is not finite, or limits that cross
 *
 * Source: ours; limits as in Lagas et al. (2021), J Orthop Sports Phys Ther
 */
export function importantChange(better: number, interval: readonly [low: number, high: number] | null): Verdict {
  requireRange(better, true, 'better', 'a finite number');
  if (interval !== null) requireRange(interval[0], interval[0] <= interval[1], 'interval', 'low <= high');
  if (better <= 0) return 'no';
  if (interval === null) return 'cannot_tell';
  const [low, high] = interval;
  if (better > high) return 'yes';
  return better < low ? 'no' : 'cannot_tell';
}
