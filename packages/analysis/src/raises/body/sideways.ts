import { median, quantile } from '../../signal/order-statistics.ts';
import type { Bank } from './bank.ts';
import type { Path } from './path-sampling.ts';

/** How large the movement across gravity usually is in the repetitions of a set: log mean square and its spread. */
export interface SidewaysLevel {
  readonly level: number;
  readonly spread: number;
}

/** Share of a set's cells whose sideways movement says nothing, and of other movement that is no larger than the set's. */
const OUTLIERS = 0.01;
const ALIKE = 0.5;
/** other movement is spread evenly over this many spreads above the set's level */
const WIDTH = 10;

/**
 * Level of the sideways movement in the repetitions that sampled paths hold.
 *
 * @param logPower - log mean square across gravity in each cell [-]
 * @param bank - templates of the paths [-]
 * @param paths - sampled segmentations [cells]
 * @returns level and spread; undefined when the paths hold too few repetitions to tell [-]
 *
 * Source: ours
 */
export function learnSideways(logPower: Float64Array, bank: Bank, paths: readonly Path[]): SidewaysLevel | undefined {
  const middles: number[] = [];
  for (const path of paths) {
    for (const { cell, template } of path.repetitions)
      middles.push(logPower[cell + (bank.templates[template].cells >> 1)]);
  }
  if (middles.length < 3 * paths.length) return undefined;
  // steps that were taken for repetitions move more, so only the lower part tells how the set moves
  const level = quantile(middles, 0.4);
  const spread = 1.4826 * median(middles.filter((one) => one <= level).map((one) => level - one));
  return { level, spread: Math.max(0.4, spread) };
}

/**
 * Log likelihood of other movement against the set's, for each cell, from the movement across gravity.
 *
 * Only movement larger than the set's speaks for other movement; cells within one window tell the same thing and share it.
 *
 * @param logPower - log mean square across gravity in each cell [-]
 * @param level - of the set [-]
 * @param cellsPerWindow - cells that share one window, > 0 [-]
 * @returns log ratio of each cell [nat]
 *
 * Source: ours
 */
export function sidewaysRatio(logPower: Float64Array, level: SidewaysLevel, cellsPerWindow: number): Float64Array {
  return logPower.map((value) => {
    const z = Math.max(0, (value - level.level) / level.spread);
    const usual = Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
    const other = ALIKE * usual + (1 - ALIKE) / WIDTH;
    return Math.log(other / ((1 - OUTLIERS) * usual + OUTLIERS / WIDTH)) / cellsPerWindow;
  });
}
