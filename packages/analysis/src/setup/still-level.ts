import { requireCount, requireFinite, requireIncreasing, requireSameLength } from '../check.ts';
import { mean, standardDeviation } from '../signal/moments.ts';
import { median } from '../signal/order-statistics.ts';
import type { LevelRule } from './setup-settings.ts';

/** Samples of one channel in time order. */
export interface Stretch {
  readonly timesS: Float64Array;
  readonly samples: Float64Array;
}

/** The level of a stretch that should be still, and how still it is. */
export interface StillLevel {
  readonly level: number;
  /** standard uncertainty of the level: scatter of the blocks and the step of the converter */
  readonly u: number;
  /** greatest less least block mean */
  readonly range: number;
  /** scatter of single samples within their block: median over the blocks */
  readonly noise: number;
  readonly spanS: number;
  readonly longestGapS: number;
}

/** Least step between two different values: that of the converter, where one shows [unit of samples]. */
function stepOf(samples: Float64Array): number {
  const sorted = samples.slice().sort();
  let least = Infinity;
  for (let i = 1; i < sorted.length; i++) {
    const step = sorted[i] - sorted[i - 1];
    if (step > 0 && step < least) least = step;
  }
  return Number.isFinite(least) ? least : 0;
}

/**
 * Level of a stretch that should be still, with its standard uncertainty and with what tells whether it is.
 *
 * The level is the mean of the means of blocks. Their scatter gives the uncertainty, so that noise which is slower than a
 * sample and faster than a block is counted; the step of the converter adds its part.
 *
 * @param stretch - samples in time order, n >= 2 [s, unit of samples]
 * @param rule - blocks and least length, see {@link LevelRule} [s]
 * @returns the level; null when the stretch is shorter than the rule asks or holds fewer than three blocks [unit of samples]
 * @throws {@link InputError} `too-short` when n < 2; `length-mismatch`; `not-finite`; `not-increasing`
 *
 * Source: definition of the standard uncertainty of a mean, JCGM 100:2008 4.2.3; step: the same, F.2.2.1
 */
export function stillLevel(stretch: Stretch, rule: LevelRule): StillLevel | null {
  const { timesS, samples } = stretch;
  requireCount(samples, 2, 'samples');
  requireSameLength(timesS, samples, 'samples');
  requireIncreasing(timesS, 'timesS');
  requireFinite(samples, 'samples');
  const spanS = timesS[timesS.length - 1] - timesS[0];
  // times carry rounding: a stretch of the asked length is long enough
  if (spanS < rule.leastS * 0.98) return null;
  const means: number[] = [];
  const scatters: number[] = [];
  let longestGapS = 0;
  let from = 0;
  for (let i = 1; i <= samples.length; i++) {
    if (i < samples.length) longestGapS = Math.max(longestGapS, timesS[i] - timesS[i - 1]);
    const isOver = i === samples.length || timesS[i] - timesS[from] >= rule.blockS;
    if (!isOver) continue;
    if (i - from >= 2) {
      means.push(mean(samples.subarray(from, i)));
      scatters.push(standardDeviation(samples.subarray(from, i)));
    }
    from = i;
  }
  if (means.length < 3) return null;
  const step = stepOf(samples);
  return {
    level: mean(means),
    u: Math.hypot(standardDeviation(means) / Math.sqrt(means.length), step / Math.sqrt(12)),
    range: Math.max(...means) - Math.min(...means),
    noise: median(scatters),
    spanS,
    longestGapS,
  };
}
