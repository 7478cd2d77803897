import { quantile } from '../signal/order-statistics.ts';

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
 * @param nearShare - share of the range in which a value is near an end of it [-]
 * @param lead - difference of the two scores from which the answer is clear [-]
 * @returns sign that turns pulls upwards, and whether it is clear [-]
 * @throws {@link InputError} `too-short` when n = 0; `not-finite`
 *
 * Source: ours
 */
export function findPolarity(values: Float64Array, nearShare: number, lead: number): Polarity {
  const low = quantile(values, 0.02);
  const high = quantile(values, 0.98);
  const near = 2 * nearShare * (high - low);
  const ends = [values.slice(0, 20), values.slice(-20)].map((part) => quantile(part, 0.5));
  const score = (isNear: (value: number) => boolean): number =>
    values.filter(isNear).length / values.length + 0.15 * ends.filter(isNear).length;
  const resting = score((value) => value <= low + near) - score((value) => value >= high - near);
  return { sign: resting >= 0 ? 1 : -1, clear: Math.abs(resting) >= lead };
}
