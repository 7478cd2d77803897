import type { TrialRule } from './effort-settings.ts';
import type { Figure } from './figure.ts';

/** Why another trial is asked for. */
export type AnotherReason = 'too-few' | 'still-improving' | 'inconsistent';

/** Accepted trials of one leg taken together; figures in the unit of the trials. */
export interface TrialSummary {
  readonly count: number;
  /** the greatest, and the mean of the best few */
  readonly best: Figure;
  readonly bestMean: Figure;
  /** standard deviation over mean of all trials [-]; null for a single one */
  readonly variation: number | null;
  /** difference of the best two over the best [-], and what it is called; null for a single trial */
  readonly spread: Figure | null;
  readonly consistency: 'good' | 'fair' | 'poor' | null;
  /** why another trial is asked for, first reason first; empty when none is */
  readonly another: readonly AnotherReason[];
  /** whether another one may be asked for: there is a greatest number of trials */
  readonly mayRepeat: boolean;
}

/**
 * Accepted trials of one leg taken together: the best, whether they agree, and whether another one is asked for. While the
 * last trial is the best by more than a share, the person still improves.
 *
 * @param trials - scores of the accepted trials in the order in which they were made, each above 0 [N or N.m]
 * @param rule - see {@link TrialRule} [-]
 * @returns the summary; null without trials [unit of trials]
 *
 * Source: common practice, no source
 */
export function summarizeTrials(trials: readonly Figure[], rule: TrialRule): TrialSummary | null {
  if (trials.length === 0) return null;
  const ranked = [...trials].sort((a, b) => b.value - a.value);
  const few = ranked.slice(0, rule.averaged);
  const mean = trials.reduce((sum, { value }) => sum + value, 0) / trials.length;
  const squares = trials.reduce((sum, { value }) => sum + (value - mean) ** 2, 0);
  const [best, second] = ranked;
  const spread =
    second === undefined
      ? null
      : { value: (best.value - second.value) / best.value, u: Math.hypot(best.u, second.u) / best.value };
  const consistency =
    spread === null
      ? null
      : spread.value <= rule.goodShare
        ? ('good' as const)
        : spread.value <= rule.fairShare
          ? ('fair' as const)
          : ('poor' as const);
  const last = trials[trials.length - 1].value;
  const bestBefore = Math.max(0, ...trials.slice(0, -1).map(({ value }) => value));
  const another: AnotherReason[] = [];
  if (trials.length < rule.leastCount) another.push('too-few');
  if (trials.length > 1 && last > bestBefore * (1 + rule.improvingShare)) another.push('still-improving');
  if (consistency === 'poor') another.push('inconsistent');
  return {
    count: trials.length,
    best,
    bestMean: {
      value: few.reduce((sum, { value }) => sum + value, 0) / few.length,
      u: Math.hypot(...few.map(({ u }) => u)) / few.length,
    },
    variation: trials.length < 2 ? null : Math.sqrt(squares / (trials.length - 1)) / mean,
    spread,
    consistency,
    another,
    mayRepeat: trials.length < rule.mostCount,
  };
}
