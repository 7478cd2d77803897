import { requireCount, requireFinite, requireRange } from '../check.ts';

/** makes the median absolute deviation of a normal distribution equal its standard deviation */
const NORMAL_SCALE = 1.482602218505602;

export interface DespikeOptions {
  /** samples on each side that a sample is compared with; spikes up to this many samples long are found [-] */
  readonly halfWindow: number;
  /** a spike lies further than this many robust standard deviations of the window from its median [-] */
  readonly threshold: number;
  /** and further than this, so that one count of a coarse sensor on a flat stretch is none; 0 if left out */
  readonly leastDeviation?: number;
}

export interface Despiked {
  /** the signal with each spike replaced by the median of its window */
  readonly samples: Float64Array;
  /** indices of the spikes, rising */
  readonly spikes: number[];
}

/** Sorts the first `count` values in place; insertion is quickest for the few values of a window. */
function sortFirst(values: Float64Array, count: number): void {
  for (let i = 1; i < count; i++) {
    const value = values[i];
    let j = i - 1;
    while (j >= 0 && values[j] > value) {
      values[j + 1] = values[j]!;
      j--;
    }
    values[j + 1] = value;
  }
}

function middle(sorted: Float64Array, count: number): number {
  const half = count >> 1;
  return count % 2 === 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}

/**
 * A signal without its isolated spikes, and where they were (Hampel identifier). Each sample is compared with the median
 * of its window, in units of the window's scaled median absolute deviation; at the ends the window is cut off. The
 * comparison always looks at the original samples, so one spike cannot hide another.
 *
 * @param samples - the signal, n >= 1, finite; left as it is [unit of samples]
 * @param options - window and threshold, see {@link DespikeOptions} [-]
 * @returns the repaired signal and the indices of the spikes [unit of samples, index]
 * @throws {@link InputError} `too-short` when n = 0; `not-finite` on NaN or infinity; `out-of-range` for the options
 *
 * Source: Davies & Gather (1993), The identification of multiple outliers, J Am Stat Assoc 88:782-792
 */
export function despike(samples: Float64Array, options: DespikeOptions): Despiked {
  const { halfWindow, threshold, leastDeviation = 0 } = options;
  requireCount(samples, 1, 'samples');
  requireFinite(samples, 'samples');
  requireRange(halfWindow, Number.isInteger(halfWindow) && halfWindow >= 1, 'halfWindow', 'a whole number >= 1');
  requireRange(threshold, threshold > 0, 'threshold', '> 0');
  requireRange(leastDeviation, leastDeviation >= 0, 'leastDeviation', '>= 0');
  const repaired = new Float64Array(samples);
  const spikes: number[] = [];
  const window = new Float64Array(2 * halfWindow + 1);
  for (let i = 0; i < samples.length; i++) {
    const from = Math.max(0, i - halfWindow);
    const count = Math.min(samples.length, i + halfWindow + 1) - from;
    for (let k = 0; k < count; k++) window[k] = samples[from + k]!;
    sortFirst(window, count);
    const centre = middle(window, count);
    const deviation = Math.abs(samples[i] - centre);
    // most samples lie within the inner part of their window, where no spike can be: skip the second sort
    if (deviation <= leastDeviation) continue;
    for (let k = 0; k < count; k++) window[k] = Math.abs(window[k] - centre);
    sortFirst(window, count);
    if (deviation > threshold * NORMAL_SCALE * middle(window, count)) {
      repaired[i] = centre;
      spikes.push(i);
    }
  }
  return { samples: repaired, spikes };
}
