import { KNEE_TO_WALL_CHANGES, KNEE_TO_WALL_TRIALS } from '@surae/shared';
import { requireRange } from '../check.ts';
import type { Verdict } from '../raises/criteria/finding.ts';

/** Unit that the reach of a shank over the planted foot was taken in. */
export type ReachUnit = keyof typeof KNEE_TO_WALL_CHANGES;

/** How a reach moved between two days. */
export interface ReachChange {
  /** later less earlier [unit of the reach] */
  readonly change: number;
  /** the greatest of the published detectable changes [unit of the reach] */
  readonly detectable: number;
  /** whether the change is more than the usual wobble: yes or cannot tell, and never no */
  readonly verdict: Verdict;
}

/**
 * The reach of a leg: the best of its trials.
 *
 * @param trials - at least one and no more than the rule allows, each at least 0 [unit of the trials]
 * @returns the greatest of them [unit of the trials]
 * @throws {@link InputError} `out-of-range` for no trial, too many, or one that is below 0
 *
 * Source: common practice, no source
 */
export function bestReach(trials: readonly number[]): number {
  const most = KNEE_TO_WALL_TRIALS.value;
  requireRange(trials.length, trials.length > 0 && trials.length <= most, 'trials', `1 to ${most} trials`);
  for (const trial of trials) requireRange(trial, trial >= 0, 'trials', '>= 0');
  return Math.max(...trials);
}

/**
 * How the reach of a leg moved, held against the greatest of the published detectable changes in the unit that it was taken in.
 * What is no more than that cannot be told from the wobble of the test.
 *
 * @param before - earlier reach, >= 0 [cm or deg]
 * @param now - later reach in the same unit, >= 0 [cm or deg]
 * @param unit - of both [-]
 * @returns see {@link ReachChange} [cm or deg]
 * @throws {@link InputError} `out-of-range` for a reach below 0
 *
 * Source: Powden et al. (2015), Man Ther 20:524; Chisholm et al. (2012), Physiother Can 64:347
 */
export function reachChange(before: number, now: number, unit: ReachUnit): ReachChange {
  requireRange(before, before >= 0, 'before', '>= 0');
  requireRange(now, now >= 0, 'now', '>= 0');
  const detectable = Math.max(...KNEE_TO_WALL_CHANGES[unit].map(({ value }) => value));
  // a difference of tenths gathers no digits that were not read off
  const change = Number((now - before).toFixed(9));
  return { change, detectable, verdict: Math.abs(change) > detectable ? 'yes' : 'cannot_tell' };
}
