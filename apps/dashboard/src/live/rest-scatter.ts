/** Length of a stretch whose scatter is taken [s]; ours. */
const blockS = 0.25;

function standardDeviation(part: Float64Array): number {
  const middle = part.reduce((sum, value) => sum + value, 0) / part.length;
  return Math.sqrt(part.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (part.length - 1));
}

/** Scatter of a reading where it is quietest: the least standard deviation over a quarter of a second; 0 where none can be had [unit of samples]. */
export function restScatter(timesS: Float64Array, samples: Float64Array): number {
  let least = Infinity;
  let from = 0;
  for (let i = 1; i < samples.length; i++) {
    if (timesS[i]! - timesS[from]! < blockS) continue;
    if (i - from >= 3) least = Math.min(least, standardDeviation(samples.subarray(from, i)));
    from = i;
  }
  return Number.isFinite(least) ? least : 0;
}
