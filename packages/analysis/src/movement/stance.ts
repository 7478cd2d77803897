import type { Interval } from '../signal/intervals.ts';
import { median } from '../signal/order-statistics.ts';

/** Which shares of body weight mark a stance on a platform. */
export interface StanceOptions {
  /** share of body weight above which someone stands on the platform [-] */
  readonly standingShare: number;
  /** share of the stance's median force at which it begins and ends [-] */
  readonly trimShare: number;
  /** left out after stepping on and before stepping off [s] */
  readonly settleS: number;
}

/** Mean over a window of one second: repetitions quick enough to unload the foot keep their mean. */
function secondMean(force: Float64Array, rateHz: number): Float64Array {
  const half = Math.round(rateHz / 2);
  const sums = new Float64Array(force.length + 1);
  for (let i = 0; i < force.length; i++) sums[i + 1] = sums[i] + force[i];
  return force.map((_, i) => {
    const from = Math.max(0, i - half);
    const to = Math.min(force.length, i + half + 1);
    return (sums[to] - sums[from]) / (to - from);
  });
}

/**
 * The longest stance on a platform.
 *
 * The longest run whose mean over a second stays above a share of body weight, trimmed at both ends until the force first
 * reaches nearly its own median. Body weight comes from the subject or, unknown, from the upper level of the force.
 *
 * @param force - vertical force on a regular grid, n >= 1 [N]
 * @param rateHz - of the grid, > 0 [Hz]
 * @param startS - time of the first sample [s]
 * @param expectedN - body weight, when known from a scale [N]
 * @param options - shares of body weight, see {@link StanceOptions} [-]
 * @returns span of the stance; undefined when nobody stands there for a second [s]
 *
 * Source: ours
 */
export function platformStance(
  force: Float64Array,
  rateHz: number,
  startS: number,
  expectedN: number | undefined,
  options: StanceOptions,
): Interval | undefined {
  const smooth = secondMean(force, rateHz);
  const sorted = Float64Array.from(smooth).sort();
  const high = sorted[Math.floor(0.95 * (sorted.length - 1))];
  if (!(high > 0)) return undefined;
  let loaded = median(sorted.filter((value) => value > 0.5 * high));
  // a scale that disagrees by half is a scale that weighed something else
  if (expectedN !== undefined && Math.abs(expectedN / loaded - 1) < 0.3) loaded = Math.max(loaded, expectedN * 0.9);
  let best: [number, number] = [0, 0];
  for (let from = 0; from < smooth.length; from++) {
    if (smooth[from] < options.standingShare * loaded) continue;
    let to = from;
    while (to < smooth.length && smooth[to] >= options.standingShare * loaded) to++;
    if (to - from > best[1] - best[0]) best = [from, to];
    from = to;
  }
  let [from, to] = best;
  if (to - from < rateHz) return undefined;
  const level = options.trimShare * median(force.subarray(from, to));
  // the mean reaches the level half a second before or after the force does
  const reach = Math.round(rateHz / 2);
  const settle = Math.round(options.settleS * rateHz);
  if (from > 0) {
    from = Math.max(0, from - reach);
    while (from < to && force[from] < level) from++;
    from += settle;
  }
  if (to < force.length) {
    to = Math.min(force.length, to + reach);
    while (to > from && force[to - 1] < level) to--;
    to -= settle;
  }
  if (to - from < rateHz) return undefined;
  return { fromS: startS + from / rateHz, toS: startS + to / rateHz };
}
