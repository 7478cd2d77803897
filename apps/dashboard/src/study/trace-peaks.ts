import type { ItemTrace } from './item-trace.ts';

/** Share of the whole height of a line that it falls behind a peak; ours: low enough to offer peaks that are no repetitions. */
const leastShare = 0.1;

/**
 * Peaks of a line as somebody would go from one to the next by eye: the greatest value between two falls of a tenth of the whole height.
 * They hang on the line alone, and on no criterion of a test: what the machine takes as a repetition is not among what is known here.
 *
 * @returns times of the peaks, rising [s]
 */
export function tracePeaks({ timesS, values }: Pick<ItemTrace, 'timesS' | 'values'>): number[] {
  const known = values.filter((value) => !Number.isNaN(value));
  if (known.length === 0) return [];
  let [least, most] = [Infinity, -Infinity];
  for (const value of known) {
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  const fall = leastShare * (most - least);
  if (!(fall > 0)) return [];
  const peaks: number[] = [];
  let low = Infinity;
  let top: { readonly value: number; readonly timeS: number } | undefined;
  values.forEach((value, at) => {
    if (Number.isNaN(value)) return;
    if (top === undefined) {
      low = Math.min(low, value);
      if (value - low >= fall) top = { value, timeS: timesS[at]! };
    } else if (value > top.value) {
      top = { value, timeS: timesS[at]! };
    } else if (top.value - value >= fall) {
      peaks.push(top.timeS);
      top = undefined;
      low = value;
    }
  });
  // a recording that ends on the way down or at a top has its last peak too
  if (top !== undefined) peaks.push(top.timeS);
  return peaks;
}

/** The next of rising times in this direction; undefined where there is none. */
export function nextTime(timesS: readonly number[], fromS: number, direction: 1 | -1): number | undefined {
  // a hair of room, so that the one that one stands on is left
  const ahead = (timeS: number): boolean => direction * (timeS - fromS) > 1e-6;
  return direction === 1 ? timesS.find(ahead) : timesS.findLast(ahead);
}
