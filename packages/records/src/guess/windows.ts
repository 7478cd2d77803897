/** A stretch of a long recording in which something happens. */
export interface Window {
  /** in the times of the file [s] */
  readonly fromS: number;
  readonly toS: number;
}

/** From this duration on it is asked where the test is [s]; ours: no test of the calf takes ten minutes. */
export const LONG_S = 600;

const SPAN_S = 1;
/** Quiet for longer than this ends a stretch, and a shorter one than that is none [s]; ours. */
const PAUSE_S = 12;
const LEAST_S = 5;
/** Kept before and after, so that rest is in it [s]; ours. */
const MARGIN_S = 3;

/** Stretches in which a signal moves much more than it usually does, from the range of each second. */
export function movingWindows(timesS: Float64Array, samples: Float64Array): Window[] {
  const first = timesS[0] ?? 0;
  const spans = Math.max(0, Math.ceil(((timesS.at(-1) ?? 0) - first) / SPAN_S));
  if (!(spans > 0) || spans > 1e6) return [];
  const low = new Float64Array(spans + 1).fill(Number.POSITIVE_INFINITY);
  const high = new Float64Array(spans + 1).fill(Number.NEGATIVE_INFINITY);
  for (let i = 0; i < timesS.length; i += 1) {
    const value = samples[i]!;
    const span = Math.floor((timesS[i]! - first) / SPAN_S);
    if (Number.isNaN(value) || !(span >= 0)) continue;
    low[span] = Math.min(low[span]!, value);
    high[span] = Math.max(high[span]!, value);
  }
  const ranges = Float64Array.from(low, (least, i) => Math.max(0, high[i]! - least));
  const sorted = Float64Array.from(ranges).sort();
  const at = (share: number): number => sorted[Math.floor(share * (sorted.length - 1))]!;
  const [quiet, most] = [at(0.5), at(0.998)];
  const limit = Math.max(3 * quiet, quiet + 0.25 * (most - quiet));
  if (!(most > limit)) return [];
  const windows: { fromS: number; toS: number }[] = [];
  for (const [i, range] of ranges.entries()) {
    if (!(range >= limit)) continue;
    const fromS = first + i * SPAN_S;
    const last = windows.at(-1);
    if (last !== undefined && fromS - last.toS <= PAUSE_S) last.toS = fromS + SPAN_S;
    else windows.push({ fromS, toS: fromS + SPAN_S });
  }
  const end = timesS.at(-1)!;
  return windows
    .filter(({ fromS, toS }) => toS - fromS >= LEAST_S)
    .map(({ fromS, toS }) => ({ fromS: Math.max(first, fromS - MARGIN_S), toS: Math.min(end, toS + MARGIN_S) }));
}
