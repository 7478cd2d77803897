/** The model's input after whitening, with running sums over the cells that hold data. */
export interface Whitened {
  readonly samples: Float64Array;
  /** 1 where the cell and its forerunners hold data */
  readonly present: Uint8Array;
  /** running sum of squares and running count of cells that hold data; entry i covers cells before i */
  readonly squares: Float64Array;
  readonly counts: Float64Array;
  /** whether any cell is absent */
  readonly complete: boolean;
}

/**
 * Coefficients of the prediction of a signal from its past and the variance that is left.
 *
 * Autocovariances over pairs of cells that both carry weight, Levinson's recursion, and a small white part that keeps
 * the recursion stable.
 *
 * @param residual - what the repetitions do not explain [m/s2]
 * @param weight - share of each cell that is noise of standing, 0 to 1 [-]
 * @param order - number of coefficients, >= 0 [-]
 * @param floor - variance of white noise to add [m2/s4]
 * @returns coefficients a of x[n] = sum a[j] x[n-1-j] + e[n] and the variance of e [-, m2/s4]
 *
 * Source: Levinson (1946), J Math Phys 25:261-278; weighting ours
 */
export function predictionCoefficients(
  residual: Float64Array,
  weight: Float64Array,
  order: number,
  floor: number,
): { coefficients: Float64Array; variance: number } {
  const covariance = new Float64Array(order + 1);
  for (let lag = 0; lag <= order; lag++) {
    let sum = 0;
    let total = 0;
    for (let i = lag; i < residual.length; i++) {
      const pair = weight[i] * weight[i - lag];
      sum += pair * residual[i] * residual[i - lag];
      total += pair;
    }
    covariance[lag] = total > 0 ? (sum / total) * (1 - lag / (4 * order + 20)) : 0;
  }
  covariance[0] = 1.002 * covariance[0] + floor;
  let coefficients = new Float64Array(0);
  let variance = covariance[0];
  for (let n = 0; n < order && variance > 0; n++) {
    let reflection = covariance[n + 1];
    for (let j = 0; j < n; j++) reflection -= coefficients[j] * covariance[n - j];
    reflection = Math.max(-0.98, Math.min(0.98, reflection / variance));
    const next = new Float64Array(n + 1);
    for (let j = 0; j < n; j++) next[j] = coefficients[j] - reflection * coefficients[n - 1 - j];
    next[n] = reflection;
    coefficients = next;
    variance *= 1 - reflection * reflection;
  }
  return { coefficients, variance };
}

/**
 * Prediction errors of a signal: what each cell adds beyond its past.
 *
 * @param signal - acceleration on the model grid [m/s2]
 * @param present - 1 where the cell holds data [-]
 * @param coefficients - from {@link predictionCoefficients}; empty leaves the signal as it is [-]
 * @returns errors, presence and running sums [m/s2, -, m2/s4]
 *
 * Source: definition
 */
export function whiten(signal: Float64Array, present: Uint8Array, coefficients: Float64Array): Whitened {
  const n = signal.length;
  const samples = new Float64Array(n);
  const kept = new Uint8Array(n);
  const squares = new Float64Array(n + 1);
  const counts = new Float64Array(n + 1);
  let complete = true;
  for (let i = 0; i < n; i++) {
    let error = signal[i];
    let ok = present[i];
    for (let j = 0; j < coefficients.length && j < i; j++) {
      error -= coefficients[j] * signal[i - 1 - j];
      ok &= present[i - 1 - j];
    }
    kept[i] = ok;
    if (ok === 1) samples[i] = error;
    else complete = false;
    squares[i + 1] = squares[i] + samples[i] * samples[i];
    counts[i + 1] = counts[i] + ok;
  }
  return { samples, present: kept, squares, counts, complete };
}

/**
 * A template as the whitened signal shows it: the same prediction errors, from rest.
 *
 * @param template - accelerations of one repetition [m/s2]
 * @param coefficients - of the prediction [-]
 * @returns whitened accelerations of the same length [m/s2]
 *
 * Source: definition
 */
export function whitenTemplate(template: Float64Array, coefficients: Float64Array): Float64Array {
  const whitened = new Float64Array(template.length);
  for (let i = 0; i < template.length; i++) {
    let error = template[i];
    for (let j = 0; j < coefficients.length && j < i; j++) error -= coefficients[j] * template[i - 1 - j];
    whitened[i] = error;
  }
  return whitened;
}
