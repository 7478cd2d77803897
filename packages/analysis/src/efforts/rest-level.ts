import { mean, standardDeviation } from '../signal/moments.ts';
import { median } from '../signal/order-statistics.ts';
import type { RestRule } from './effort-settings.ts';

/** Level of a signal at rest in a stretch beside an effort. */
export interface RestLevel {
  readonly level: number;
  readonly u: number;
  /** scatter of the blocks that were averaged, and of single samples */
  readonly blockSd: number;
  readonly sampleSd: number;
  /** middle of the stretch [s] */
  readonly centreS: number;
}

/** Samples in time order. */
export interface Samples {
  readonly timesS: Float64Array;
  readonly samples: Float64Array;
}

/**
 * First index whose time is not before the given one.
 *
 * @param timesS - sample times, strictly rising [s]
 * @param timeS - the time [s]
 * @returns the index; the number of samples when all are earlier [index]
 *
 * Source: definition
 */
export function firstFrom(timesS: Float64Array, timeS: number): number {
  let low = 0;
  let high = timesS.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (timesS[middle] < timeS) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Mean of the shorter half: the half of the sorted values that lies closest together. */
function shorthMean(sorted: Float64Array): number {
  const half = Math.ceil((sorted.length + 1) / 2);
  let best = 0;
  for (let i = 0; i + half <= sorted.length; i++) {
    if (sorted[i + half - 1] - sorted[i] < sorted[best + half - 1] - sorted[best]) best = i;
  }
  return mean(sorted.slice(best, best + half));
}

/**
 * Level at rest in a stretch: the mean of the block means that lie about their shorter half, so that tension that creeps
 * in, a dip and knocks are left out. The uncertainty is that of the mean of the blocks that were kept.
 *
 * @param signal - samples in time order [s, unit of samples]
 * @param fromS - start of the stretch [s]
 * @param toS - end of the stretch [s]
 * @param rule - how the level is taken, see {@link RestRule} [-]
 * @returns the level; null when the stretch is too short or holds too few samples [unit of samples]
 *
 * Source: ours; shorter half: Rousseeuw & Leroy (1987), Robust Regression and Outlier Detection, chapter 4
 */
export function restLevel(signal: Samples, fromS: number, toS: number, rule: RestRule): RestLevel | null {
  if (toS - fromS < rule.leastS) return null;
  const { timesS, samples } = signal;
  const means: number[] = [];
  const squares: number[] = [];
  for (let blockS = fromS; blockS + rule.blockS <= toS + 1e-9; blockS += rule.blockS) {
    const from = firstFrom(timesS, blockS);
    const to = firstFrom(timesS, blockS + rule.blockS);
    if (to - from < 2) continue;
    const part = samples.subarray(from, to);
    means.push(mean(part));
    squares.push(standardDeviation(part));
  }
  if (means.length < 3) return null;
  const middle = shorthMean(Float64Array.from(means).sort());
  const spread = 1.4826 * median(means.map((value) => Math.abs(value - middle)));
  const kept = means.filter((value) => Math.abs(value - middle) <= rule.outlying * spread);
  const level = kept.length > 0 ? mean(kept) : middle;
  const blockSd = kept.length > 1 ? standardDeviation(kept) : spread;
  return {
    level,
    u: blockSd / Math.sqrt(Math.max(1, kept.length)),
    blockSd,
    sampleSd: median(squares),
    centreS: (fromS + toS) / 2,
  };
}

/** The resting level under an effort: a line through the levels before and after it, or one of them alone. */
export interface RestLine {
  readonly before: RestLevel | null;
  readonly after: RestLevel | null;
  at(timeS: number): number;
  u(timeS: number): number;
}

/**
 * The resting level under an effort.
 *
 * @param before - level before it, or null [unit of level]
 * @param after - level after it, or null [unit of level]
 * @param lineShare - uncertainty of the course between them, in shares of their difference [-]
 * @returns the line; null when neither is known [unit of level]
 *
 * Source: ours
 */
export function restLine(before: RestLevel | null, after: RestLevel | null, lineShare: number): RestLine | null {
  const only = before ?? after;
  if (only === null) return null;
  if (before === null || after === null) return { before, after, at: () => only.level, u: () => only.u };
  const share = (timeS: number): number =>
    Math.min(1, Math.max(0, (timeS - before.centreS) / (after.centreS - before.centreS)));
  return {
    before,
    after,
    at: (timeS) => before.level + share(timeS) * (after.level - before.level),
    u: (timeS) => {
      const s = share(timeS);
      const bend = 4 * s * (1 - s) * lineShare * (after.level - before.level);
      return Math.hypot((1 - s) * before.u, s * after.u, bend);
    },
  };
}
