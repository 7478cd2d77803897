import { requireRange } from '../check.ts';
import { quantileInPlace } from '../signal/order-statistics.ts';
import type { PullSignal } from './pull-signal.ts';

/** A signal of few samples that knocks do not reach: medians of blocks, then a running median. */
export interface CoarseLevel {
  readonly startS: number;
  readonly intervalS: number;
  readonly values: Float64Array;
}

function blockMedians({ timesS, samples }: PullSignal, intervalS: number): Float64Array {
  const startS = timesS[0];
  const count = Math.floor((timesS[timesS.length - 1] - startS) / intervalS) + 1;
  const medians = new Float64Array(count).fill(Number.NaN);
  for (let i = 0; i < samples.length; ) {
    const block = Math.floor((timesS[i] - startS) / intervalS);
    let end = i + 1;
    while (end < samples.length && Math.floor((timesS[end] - startS) / intervalS) === block) end++;
    medians[Math.min(count - 1, block)] = quantileInPlace(samples.slice(i, end), 0.5);
    i = end;
  }
  return fillEmpty(medians);
}

/** Blocks without samples lie on the straight line between their neighbours; the first and the last always have one. */
function fillEmpty(values: Float64Array): Float64Array {
  let last = 0;
  for (let i = 1; i < values.length; i++) {
    if (Number.isNaN(values[i])) continue;
    for (let k = last + 1; k < i; k++) {
      values[k] = values[last] + ((values[i] - values[last]) * (k - last)) / (i - last);
    }
    last = i;
  }
  return values;
}

/** Place of the first of so many rising values that is not below the given one. */
function placeOf(sorted: Float64Array, count: number, value: number): number {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle] < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * Running median; at the ends the window is cut off.
 *
 * @param values - the signal [unit of values]
 * @param halfWindow - samples on each side, >= 0 [-]
 * @returns medians, same length [unit of values]
 * @throws {@link InputError} `out-of-range` for the window
 *
 * Source: definition
 */
export function runningMedian(values: Float64Array, halfWindow: number): Float64Array {
  requireRange(halfWindow, Number.isInteger(halfWindow) && halfWindow >= 0, 'halfWindow', 'a whole number >= 0');
  const sorted = new Float64Array(2 * halfWindow + 1);
  let count = 0;
  const medians = new Float64Array(values.length);
  for (let i = -halfWindow; i < values.length; i++) {
    const entering = i + halfWindow;
    const leaving = i - halfWindow - 1;
    if (leaving >= 0) {
      const place = placeOf(sorted, count, values[leaving]);
      sorted.copyWithin(place, place + 1, count--);
    }
    if (entering < values.length) {
      const place = placeOf(sorted, count, values[entering]);
      sorted.copyWithin(place + 1, place, count++);
      sorted[place] = values[entering];
    }
    if (i >= 0) medians[i] = (sorted[(count - 1) >> 1] + sorted[count >> 1]) / 2;
  }
  return medians;
}

/**
 * The slow course of a pull signal, without knocks and single spikes, for finding efforts and not for measuring them.
 *
 * @param signal - the signal at its own times [N or N.m]
 * @param blockS - length of a block; a longer sampling interval takes its place, > 0 [s]
 * @param medianS - window of the running median [s]
 * @returns medians at the middles of the blocks [unit of signal]
 * @throws {@link InputError} `out-of-range` for the block
 *
 * Source: ours
 */
export function coarseLevel(signal: PullSignal, blockS: number, medianS: number): CoarseLevel {
  requireRange(blockS, blockS > 0, 'blockS', '> 0');
  const intervalS = Math.max(blockS, 1 / signal.sampleRateHz);
  const halfWindow = Math.max(0, Math.floor(medianS / intervalS / 2));
  const values = runningMedian(blockMedians(signal, intervalS), halfWindow);
  return { startS: signal.timesS[0] + intervalS / 2, intervalS, values };
}

/**
 * Resting level to begin with: a low quantile of the values around, straight between the centres of the windows.
 *
 * @param values - slow course of the signal, pulls upwards [unit of values]
 * @param window - values in a window, >= 1 [-]
 * @param share - of the values in a window that lie below, 0 to 1 [-]
 * @returns the level at each value [unit of values]
 * @throws {@link InputError} `out-of-range` for the window
 *
 * Source: ours
 */
export function rollingLevel(values: Float64Array, window: number, share: number): Float64Array {
  requireRange(window, window >= 1, 'window', '>= 1');
  const half = Math.ceil(window / 2);
  const step = Math.max(1, Math.ceil(window / 60));
  const last = values.length - 1;
  const levelAt = (i: number): number =>
    quantileInPlace(values.slice(Math.max(0, i - half), Math.min(values.length, i + half + 1)), share);
  const level = new Float64Array(values.length);
  for (let from = 0; from <= last; from += step) {
    const to = Math.min(last, from + step);
    const [low, high] = [levelAt(from), levelAt(to)];
    for (let i = from; i <= to; i++) level[i] = to === from ? low : low + ((high - low) * (i - from)) / (to - from);
  }
  return level;
}
