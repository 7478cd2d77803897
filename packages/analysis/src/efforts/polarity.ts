import { quantile } from '../signal/order-statistics.ts';
import type { PullRule } from './effort-settings.ts';

/** Which way the reading goes when somebody pulls. */
export interface Polarity {
  readonly sign: 1 | -1;
  /** whether the signal tells it plainly */
  readonly clear: boolean;
}

/**
 * Which way the reading goes when somebody pulls: the resting level lies at one end of the range, more of the time is spent
 * there, and a recording begins and ends there.
 *
 * @param values - slow course of the signal, n >= 1 [unit of values]
 * @param intervalS - time between two values, > 0 [s]
 * @param rule - shares and scores, see {@link PullRule} [-]
 * @returns sign that turns pulls upwards, and whether it is clear [-]
 * @throws {@link InputError} `too-short` when n = 0; `not-finite`
 *
 * Source: ours
 */
export function findPolarity(values: Float64Array, intervalS: number, rule: PullRule): Polarity {
  const low = quantile(values, rule.lowQuantile);
  const high = quantile(values, rule.highQuantile);
  const near = 2 * rule.nearShare * (high - low);
  const count = Math.max(1, Math.round(rule.endS / intervalS));
  const ends = [values.slice(0, count), values.slice(-count)].map((part) => quantile(part, 0.5));
  const score = (isNear: (value: number) => boolean): number =>
    values.filter(isNear).length / values.length + rule.endScore * ends.filter(isNear).length;
  const resting = score((value) => value <= low + near) - score((value) => value >= high - near);
  return { sign: resting >= 0 ? 1 : -1, clear: Math.abs(resting) >= rule.polarityLead };
}
