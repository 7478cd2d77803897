import { requireRange } from '../check.ts';

/** Where the mean over a window is greatest. */
export interface BestMean {
  readonly value: number;
  /** first sample of the window */
  readonly fromIndex: number;
}

/**
 * Greatest mean over a window that moves sample by sample; the window is a whole number of samples.
 *
 * @param samples - the signal [unit of samples]
 * @param from - first index that a window may hold [index]
 * @param to - one after the last [index]
 * @param window - samples in a window, a whole number >= 1 [-]
 * @returns the mean and where its window begins; null when the stretch is shorter than the window [unit of samples, index]
 * @throws {@link InputError} `out-of-range` for the window
 *
 * Source: definition
 */
export function bestRollingMean(samples: Float64Array, from: number, to: number, window: number): BestMean | null {
  requireRange(window, Number.isInteger(window) && window >= 1, 'window', 'a whole number >= 1');
  if (to - from < window) return null;
  let sum = 0;
  for (let i = from; i < from + window; i++) sum += samples[i];
  let best = sum;
  let fromIndex = from;
  for (let i = from + window; i < to; i++) {
    sum += samples[i] - samples[i - window];
    if (sum > best) {
      best = sum;
      fromIndex = i - window + 1;
    }
  }
  return { value: best / window, fromIndex };
}
