import { verticalAcceleration } from './lever-arm.ts';

export interface BehindEstimate {
  /** distance of the sensor behind the metatarsal heads [m] */
  readonly behindM: number;
  /** share of agreement between the turn and the vertical acceleration, -1 to 1; negative when tilt has the wrong sense */
  readonly agreement: number;
}

export interface BehindPrior {
  /** usual distance behind the metatarsal heads [m] */
  readonly behindM: number;
  /** its spread between mountings [m] */
  readonly behindSdM: number;
  /** height above the sole line, taken as known [m] */
  readonly aboveM: number;
  /** spread of the vertical acceleration that the turn does not explain, of one independent sample [m/s2] */
  readonly accelerationSd: number;
}

/**
 * How far the sensor sits behind the metatarsal heads, from the vertical acceleration that the turn of the foot gives
 * it: the magnitude of the specific force minus gravity, regressed on the second derivative of the sine of the tilt,
 * with what is usual as prior.
 *
 * @param tilt - elevation of the foot line, low-passed [rad]
 * @param excess - magnitude of the specific force minus gravity, with the same low-pass [m/s2]
 * @param weights - 0 for samples that must not count, such as gaps and steps, else 1 [-]
 * @param sampleRateHz - samples per second [Hz]
 * @param prior - what is usual, see {@link BehindPrior} [m, m/s2]
 * @returns distance and how well the two signals agree [m, -]
 *
 * Source: ours (linear regression with a normal prior)
 */
export function estimateBehind(
  tilt: Float64Array,
  excess: Float64Array,
  weights: Float64Array,
  sampleRateHz: number,
  prior: BehindPrior,
): BehindEstimate {
  const perMetre = verticalAcceleration(tilt, sampleRateHz, { behindM: 1, aboveM: 0 });
  const fromAbove = verticalAcceleration(tilt, sampleRateHz, { behindM: 0, aboveM: prior.aboveM });
  let count = 0;
  let mean = 0;
  for (let i = 0; i < tilt.length; i++) {
    count += weights[i];
    mean += weights[i] * (excess[i] - fromAbove[i]);
  }
  if (count === 0) return { behindM: prior.behindM, agreement: 0 };
  mean /= count; // gravity as the sensor shows it may differ from the standard one
  let xx = 0;
  let xy = 0;
  let yy = 0;
  for (let i = 0; i < tilt.length; i++) {
    const x = perMetre[i];
    const y = excess[i] - fromAbove[i] - mean;
    xx += weights[i] * x * x;
    xy += weights[i] * x * y;
    yy += weights[i] * y * y;
  }
  // Low-passed samples repeat each other: about one in ten at the working rate counts as independent.
  const precision = xx / (10 * prior.accelerationSd * prior.accelerationSd);
  const priorPrecision = 1 / (prior.behindSdM * prior.behindSdM);
  const behindM =
    (priorPrecision * prior.behindM + (xx > 0 ? precision * (xy / xx) : 0)) / (priorPrecision + precision);
  return { behindM, agreement: xx > 0 && yy > 0 ? xy / Math.sqrt(xx * yy) : 0 };
}
