// How well the time of a top can be told at all: the Bayesian Cramér-Rao bound of one repetition.
// Source: Van Trees (1968), Detection, Estimation, and Modulation Theory I, section 2.4: covariance >= (J' C^-1 J + P^-1)^-1.
// Known are the shape of the person's moves and how the tempo spreads in the set; unknown are this repetition's start, rise,
// hold, fall, height and the bottoms beside it. Noise is the sway at the heel, or the wobble in the acceleration of the body.
import { errorFunction } from 'simple-statistics';

/** Points of a repetition, and time looked at before and after it [s]; ours. */
const points = 120;
const marginS = 0.4;

/** Sway that breathing adds: share of the sway and rate [-], [Hz]; the middle of what the simulation draws. */
const breath = { share: 0.25, hz: 0.275 };

/** How exactly a bottom is known besides [m]; ours. */
const bottomM = 0.004;

/** Steps of the numerical derivatives: times [s], levels [m]. */
const steps = [4e-3, 4e-3, 4e-3, 4e-3, 2e-4, 2e-4, 2e-4];

/** Share of each unknown in the time of the top: start, rise, hold, fall, top, bottoms. */
const ofTop = [1, 1, 0.5, 0, 0, 0, 0];

/** Height at times, of a repetition with the given unknowns. */
function heights([startS, riseS, holdS, fallS, top, before, after], person, times, wayGone) {
  return times.map((timeS) => {
    const since = timeS - startS;
    return since < riseS + holdS
      ? before + (top - before) * wayGone(person.upShape, since / riseS)
      : top + (after - top) * wayGone(person.downShape, (since - riseS - holdS) / fallS);
  });
}

function secondDifference(samples, stepS) {
  return samples.map((value, i) => {
    const [before, after] = [samples[i - 1] ?? value, samples[i + 1] ?? value];
    return (before - 2 * value + after) / (stepS * stepS);
  });
}

/** Autocovariance of white noise through two equal poles: variance (1 + a |t|) exp(-a |t|). */
function twoPoles(variance, cornerHz, lagS) {
  const a = 2 * Math.PI * cornerHz * lagS;
  return variance * (1 + a) * Math.exp(-a);
}

/** Autocovariance of what hides the repetition, at a lag [s], and the white part of it. */
function noiseOf(placement, person, faults, stepS) {
  if (placement === 'heel' || placement === 'foot') {
    const variance = faults.swayHeelM ** 2 / (1 + breath.share ** 2);
    return (lagS) =>
      twoPoles(variance, faults.swayCornerHz, lagS) +
      variance * breath.share ** 2 * Math.cos(2 * Math.PI * breath.hz * lagS) +
      (lagS === 0 ? (faults.stringNoiseM ** 2 * 0.01) / stepS + 1e-10 : 0);
  }
  const density = placement === 'trunk' ? faults.trunkWobble : faults.platformWobble;
  const white =
    placement === 'trunk' ? faults.accelerometerNoise ** 2 / 2 : (faults.forceNoiseN / person.bodyMassKg) ** 2 / 200;
  // one-sided density of the wobble times the noise bandwidth of two poles, pi f / 4
  const variance = density ** 2 * ((Math.PI * faults.wobbleCornerHz) / 4);
  return (lagS) => twoPoles(variance, faults.wobbleCornerHz, lagS) + (lagS === 0 ? white / stepS + 1e-9 : 0);
}

/** Lower triangle L of a positive definite matrix, L L' = matrix. */
function cholesky(matrix) {
  const size = matrix.length;
  const lower = matrix.map(() => new Float64Array(size));
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i][j];
      for (let k = 0; k < j; k++) sum -= lower[i][k] * lower[j][k];
      lower[i][j] = i === j ? Math.sqrt(sum) : sum / lower[j][j];
    }
  }
  return lower;
}

/** Solution of L y = right. */
function forward(lower, right) {
  const solved = new Float64Array(right.length);
  for (let i = 0; i < right.length; i++) {
    let sum = right[i];
    for (let k = 0; k < i; k++) sum -= lower[i][k] * solved[k];
    solved[i] = sum / lower[i][i];
  }
  return solved;
}

/** right' matrix^-1 right. */
function inverseForm(matrix, right) {
  return forward(cholesky(matrix), right).reduce((sum, value) => sum + value * value, 0);
}

/** Precision of the unknowns before anything is seen: parts share the tempo's spread and have some of their own. */
function priorPrecision([, riseS, holdS, fallS, top], faults) {
  const precision = steps.map(() => new Float64Array(steps.length));
  const parts = [riseS, holdS, fallS];
  const own = parts.map((part) => (faults.partSpread * part + 1e-4) ** -2);
  const tempo = faults.tempoSpread ** 2;
  const shared = parts.reduce((sum, part, i) => sum + part * part * own[i], 0);
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) {
      // Sherman and Morrison (1950): inverse of a diagonal plus a product
      const common = (tempo * own[i] * parts[i] * own[j] * parts[j]) / (1 + tempo * shared);
      precision[1 + i][1 + j] = (i === j ? own[i] : 0) - common;
    }
  }
  precision[4][4] = (faults.heightSpread * top + 0.002) ** -2;
  precision[5][5] = precision[6][6] = bottomM ** -2;
  return precision;
}

/**
 * Least standard deviation of the time of one top [s].
 * `set` is a simulated set, `repetition` one of its true repetitions, `wayGone` the simulation's shape of a move.
 */
export function topLimitS(placement, set, repetition, wayGone) {
  const { person } = set.truth;
  const { startS, highFromS, highToS, endS, heelHeightM, bodyRiseM, lowBeforeM, lowAfterM } = repetition;
  const position = placement === 'heel' || placement === 'foot';
  const scale = position ? 1 : bodyRiseM / heelHeightM;
  const levels = [heelHeightM, lowBeforeM, lowAfterM].map((level) => level * scale);
  const unknowns = [startS, highFromS - startS, highToS - highFromS, endS - highToS, ...levels];
  const stepS = (endS - startS + 2 * marginS) / points;
  const times = Array.from({ length: points }, (_, i) => startS - marginS + (i + 0.5) * stepS);
  const signal = (values) => {
    const height = heights(values, person, times, wayGone);
    return position ? height : secondDifference(height, stepS);
  };
  const noise = noiseOf(placement, person, set.faults, stepS);
  const lags = times.map((_, i) => noise(i * stepS));
  const lower = cholesky(times.map((_, i) => times.map((__, j) => lags[Math.abs(i - j)])));
  const slopes = steps.map((step, n) => {
    const moved = (by) => signal(unknowns.map((value, i) => (i === n ? value + by : value)));
    const [after, before] = [moved(step), moved(-step)];
    return forward(
      lower,
      after.map((value, i) => (value - before[i]) / (2 * step)),
    );
  });
  const information = priorPrecision(unknowns, set.faults).map((row, i) =>
    row.map((value, j) => value + slopes[i].reduce((sum, slope, k) => sum + slope * slopes[j][k], 0)),
  );
  return Math.sqrt(inverseForm(information, ofTop));
}

/** Error below which 95 % lie, when each error is normal with its own standard deviation. */
export function pooledP95(deviations) {
  let [low, high] = [0, 10 * Math.max(...deviations)];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    const inside = deviations.reduce((sum, sd) => sum + errorFunction(middle / (sd * Math.SQRT2)), 0);
    if (inside < 0.95 * deviations.length) low = middle;
    else high = middle;
  }
  return high;
}
