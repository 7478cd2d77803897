import { type Grid, gridOver, medianRateHz, resample } from '../signal/grid.ts';
import { lowPassZeroPhase } from '../signal/lowpass.ts';

/**
 * Samples on a regular grid, each the mean of what lies nearest to it, or interpolated where nothing does.
 *
 * @param timesS - native times, rising [s]
 * @param samples - native samples [any]
 * @param grid - where to [s]
 * @returns one value for each instant of the grid [unit of samples]
 *
 * Source: ours
 */
export function gridMeans(timesS: Float64Array, samples: Float64Array, grid: Grid): Float64Array {
  const means = resample(timesS, samples, grid);
  if (medianRateHz(timesS) < 1.5 * grid.sampleRateHz) return means;
  const sums = new Float64Array(grid.count);
  const counts = new Float64Array(grid.count);
  for (let i = 0; i < timesS.length; i++) {
    const at = Math.round((timesS[i] - grid.startS) * grid.sampleRateHz);
    if (at < 0 || at >= grid.count) continue;
    sums[at] += samples[i];
    counts[at] += 1;
  }
  for (let i = 0; i < grid.count; i++) if (counts[i] > 0) means[i] = sums[i] / counts[i];
  return means;
}

/**
 * Smooth samples on a regular grid from native samples of any rate.
 *
 * @param timesS - native times, rising, n >= 2 [s]
 * @param samples - native samples, finite [any]
 * @param rateHz - rate of the grid [Hz]
 * @param cutoffHz - zero-lag low-pass, below half of the rate [Hz]
 * @returns the grid, its values before and after the low-pass [s, unit of samples]
 *
 * Source: ours
 */
export function smoothGrid(
  timesS: Float64Array,
  samples: readonly Float64Array[],
  rateHz: number,
  cutoffHz: number,
): { grid: Grid; means: Float64Array[]; values: Float64Array[] } {
  const grid = gridOver(timesS, rateHz);
  const means = samples.map((axis) => gridMeans(timesS, axis, grid));
  return { grid, means, values: means.map((axis) => lowPassZeroPhase(axis, rateHz, cutoffHz)) };
}
