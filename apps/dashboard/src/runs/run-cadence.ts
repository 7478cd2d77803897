import { RUN_FILE_LIMITS } from '@surae/shared';

/** How a rate of steps was counted. */
export interface RunCadence {
  /** middle value as the file has it, without the points at which nobody stepped [1/min] */
  readonly counted: number;
  /** of one foot or of both; a rate between the two may be either */
  readonly as: 'one-foot' | 'both' | 'unclear';
  /** steps of both feet; null where it is not known of how many feet they are [1/min] */
  readonly perMin: number | null;
}

const limit = (name: 'oneFootLeast' | 'oneFootMost' | 'bothLeast' | 'bothMost' | 'cadenceShare'): number =>
  RUN_FILE_LIMITS[name].value;

function middle(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  return Number.isInteger(half) ? (sorted[half - 1]! + sorted[half]!) / 2 : sorted[Math.floor(half)]!;
}

/**
 * Steps a minute of a run, from what stands beside its points. Files count the steps of one foot or of both and do not say which: only
 * a rate that can be but one of them is taken.
 *
 * @param counted - at each point; null where none was written [1/min]
 * @returns null where fewer than half of the points have one, or none is a rate of steps [1/min]
 *
 * Source: ours; the limits have their own in the shared data
 */
export function runCadence(counted: readonly (number | null)[]): RunCadence | null {
  const told = counted.filter((one) => one !== null);
  const stepping = told.filter((one) => one > 0);
  if (told.length < limit('cadenceShare') * counted.length || stepping.length === 0) return null;
  const rate = Math.round(middle(stepping));
  if (rate < limit('oneFootLeast') || rate > limit('bothMost')) return null;
  if (rate <= limit('oneFootMost')) return { counted: rate, as: 'one-foot', perMin: 2 * rate };
  return rate < limit('bothLeast')
    ? { counted: rate, as: 'unclear', perMin: null }
    : { counted: rate, as: 'both', perMin: rate };
}
