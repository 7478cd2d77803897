import { scatter } from './scatter.ts';

/** Length of a stretch whose scatter is taken [s]; ours. */
const blockS = 0.25;

/** Scatter of a reading where it is quietest: the least standard deviation over a quarter of a second; null where none can be had [unit of samples]. */
export function restScatter(timesS: Float64Array, samples: Float64Array): number | null {
  let least = Infinity;
  let from = 0;
  for (let i = 1; i < samples.length; i++) {
    if (timesS[i]! - timesS[from]! < blockS) continue;
    least = Math.min(least, scatter(samples.subarray(from, i), 3) ?? Infinity);
    from = i;
  }
  return Number.isFinite(least) ? least : null;
}
