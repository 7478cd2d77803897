/** A stretch in which a signal hardly moves: samples [from, to), and the level it has there. */
export interface StillRun {
  readonly from: number;
  readonly to: number;
  /** median level [unit of signal] */
  readonly level: number;
}

/**
 * Greatest minus least value in a window around each sample; the window is cut off at the ends.
 *
 * @param signal - regularly sampled [any unit]
 * @param halfWindow - samples on either side, >= 0 [-]
 * @returns the range at each sample [unit of signal]
 *
 * Source: definition; two monotone queues (Lemire 2006, Nordic J Comput 13:328-339)
 */
export function slidingRange(signal: Float64Array, halfWindow: number): Float64Array {
  const count = signal.length;
  const range = new Float64Array(count);
  const highs = new Int32Array(count);
  const lows = new Int32Array(count);
  let highFrom = 0;
  let highTo = 0;
  let lowFrom = 0;
  let lowTo = 0;
  for (let next = 0; next < count + halfWindow; next++) {
    if (next < count) {
      while (highTo > highFrom && signal[highs[highTo - 1]] <= signal[next]) highTo--;
      highs[highTo++] = next;
      while (lowTo > lowFrom && signal[lows[lowTo - 1]] >= signal[next]) lowTo--;
      lows[lowTo++] = next;
    }
    const centre = next - halfWindow;
    if (centre < 0) continue;
    while (highs[highFrom] < centre - halfWindow) highFrom++;
    while (lows[lowFrom] < centre - halfWindow) lowFrom++;
    range[centre] = signal[highs[highFrom]] - signal[lows[lowFrom]];
  }
  return range;
}

/**
 * Stretches in which the range over a sliding window stays within a tolerance.
 *
 * @param signal - regularly sampled, low-passed [any unit]
 * @param halfWindow - half of the window, in samples [-]
 * @param tolerance - greatest range within the window [unit of signal]
 * @returns runs in time order; a run covers the windows of its samples, so it is longer than one window [index, unit of signal]
 *
 * Source: ours
 */
export function findStillRuns(signal: Float64Array, halfWindow: number, tolerance: number): StillRun[] {
  const range = slidingRange(signal, halfWindow);
  const runs: StillRun[] = [];
  const count = signal.length;
  let first = -1;
  for (let i = 0; i <= count; i++) {
    const still = i < count && range[i] <= tolerance;
    if (still && first < 0) first = i;
    if (still || first < 0) continue;
    const from = Math.max(0, first - halfWindow);
    const to = Math.min(count, i + halfWindow);
    const sorted = signal.slice(first, i).sort();
    runs.push({ from, to, level: sorted[sorted.length >> 1] });
    first = -1;
  }
  return runs;
}
