import { mean } from '../signal/moments.ts';
import { median, quantile } from '../signal/order-statistics.ts';

/** Mean of what lies near the median: the median itself would jump between the two halves of a slow swing. */
function usualMean(values: Float64Array): number {
  const middle = median(values);
  const reach = 1.5 * (quantile(values, 0.9) - quantile(values, 0.1));
  return mean(values.filter((value) => Math.abs(value - middle) <= reach));
}

/**
 * Slow drift of a signal: the running mean of one-second means, strange ones left out, joined by lines.
 *
 * @param samples - signal on a regular grid, n >= 1 [any]
 * @param sampleRateHz - of the grid, > 0 [Hz]
 * @param windowS - span of the running mean [s]
 * @returns drift at each sample [unit of samples]
 *
 * Source: ours
 */
export function slowDrift(samples: Float64Array, sampleRateHz: number, windowS: number): Float64Array {
  const block = Math.max(1, Math.round(sampleRateHz));
  const blocks = Math.max(1, Math.floor(samples.length / block));
  const means = new Float64Array(blocks);
  for (let b = 0; b < blocks; b++) {
    const to = b === blocks - 1 ? samples.length : (b + 1) * block;
    let sum = 0;
    for (let i = b * block; i < to; i++) sum += samples[i];
    means[b] = sum / (to - b * block);
  }
  const half = Math.max(1, Math.round(windowS / 2));
  const levels = new Float64Array(blocks);
  for (let b = 0; b < blocks; b++) {
    levels[b] = usualMean(means.subarray(Math.max(0, b - half), Math.min(blocks, b + half + 1)));
  }
  const drift = new Float64Array(samples.length);
  for (let i = 0; i < samples.length; i++) {
    const at = Math.max(0, Math.min(blocks - 1, (i + 0.5) / block - 0.5));
    const from = Math.floor(at);
    const to = Math.min(blocks - 1, from + 1);
    drift[i] = levels[from] + (at - from) * (levels[to] - levels[from]);
  }
  return drift;
}
