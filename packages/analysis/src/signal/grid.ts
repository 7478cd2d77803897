import { requireCount, requireRange, requireSameLength } from '../check.ts';
import { quantileInPlace } from './order-statistics.ts';

/** A regular grid of instants: startS + i / sampleRateHz for i = 0 .. count - 1. */
export interface Grid {
  /** first instant, on the recording's clock [s] */
  readonly startS: number;
  readonly sampleRateHz: number;
  readonly count: number;
}

/** So many intervals, spread over the whole, tell the median of a long recording as well as all of them. */
const enoughIntervals = 10_000;

/**
 * Sampling rate as one over the median interval, so that lost packets and pauses leave it alone. Of a recording with
 * more than twenty thousand samples every so many intervals are looked at, from the first to the last.
 *
 * @param timesS - sample times, strictly rising, n >= 2 [s]
 * @returns the rate [Hz]
 * @throws {@link InputError} `too-short` when n < 2; `out-of-range` when the median interval is not above 0
 *
 * Source: ours
 */
export function medianRateHz(timesS: Float64Array): number {
  requireCount(timesS, 2, 'timesS');
  const stride = Math.max(1, Math.floor((timesS.length - 1) / enoughIntervals));
  const intervals = new Float64Array(Math.floor((timesS.length - 2) / stride) + 1);
  for (let i = 0; i < intervals.length; i++) intervals[i] = timesS[i * stride + 1] - timesS[i * stride];
  const intervalS = quantileInPlace(intervals, 0.5);
  requireRange(intervalS, intervalS > 0, 'timesS', 'rising times');
  return 1 / intervalS;
}

/**
 * The grid that spans the sample times from the first to the last, ends included.
 *
 * @param timesS - sample times, strictly rising, n >= 1 [s]
 * @param sampleRateHz - rate of the grid, > 0 [Hz]
 * @returns the grid [s, Hz]
 * @throws {@link InputError} `too-short` when n = 0; `out-of-range` for the rate
 *
 * Source: definition
 */
export function gridOver(timesS: Float64Array, sampleRateHz: number): Grid {
  requireCount(timesS, 1, 'timesS');
  requireRange(sampleRateHz, sampleRateHz > 0, 'sampleRateHz', '> 0');
  const startS = timesS[0];
  // the slack keeps the last sample when the product falls a rounding error short of a whole number
  const count = Math.floor((timesS.at(-1)! - startS) * sampleRateHz + 1e-6) + 1;
  return { startS, sampleRateHz, count };
}

/**
 * A signal on a regular grid, by straight lines between its samples; before the first and after the last sample it
 * holds their value.
 *
 * @param timesS - sample times, strictly rising, n >= 1 [s]
 * @param samples - the signal at those times [unit of samples]
 * @param grid - instants wanted, count >= 0, rate > 0 [s, Hz]
 * @returns one value per instant of the grid [unit of samples]
 * @throws {@link InputError} `too-short` when n = 0; `length-mismatch`; `out-of-range` for the grid
 *
 * Source: definition
 */
export function resample(timesS: Float64Array, samples: Float64Array, grid: Grid): Float64Array {
  requireCount(timesS, 1, 'timesS');
  requireSameLength(timesS, samples, 'samples');
  requireRange(grid.sampleRateHz, grid.sampleRateHz > 0, 'grid.sampleRateHz', '> 0');
  requireRange(grid.count, Number.isInteger(grid.count) && grid.count >= 0, 'grid.count', 'a whole number >= 0');
  const last = timesS.length - 1;
  const resampled = new Float64Array(grid.count);
  let next = 0;
  for (let i = 0; i < resampled.length; i++) {
    const timeS = grid.startS + i / grid.sampleRateHz;
    while (next <= last && timesS[next] < timeS) next++;
    if (next === 0) resampled[i] = samples[0]!;
    else if (next > last) resampled[i] = samples[last]!;
    else {
      const fromS = timesS[next - 1];
      const before = samples[next - 1];
      resampled[i] = before + ((samples[next] - before) * (timeS - fromS)) / (timesS[next] - fromS);
    }
  }
  return resampled;
}
