/**
 * Solution of a system of equations whose matrix has a main diagonal and one on either side.
 *
 * @param lower - entries left of the diagonal; the first is not used [-]
 * @param diagonal - entries on the diagonal; together with the others diagonally dominant [-]
 * @param upper - entries right of the diagonal; the last is not used [-]
 * @param right - right-hand side; overwritten with the solution [any unit]
 * @returns the solution, the same array as `right` [unit of right]
 *
 * Source: Thomas (1949), Elliptic problems in linear difference equations over a network (Gaussian elimination)
 */
export function solveTridiagonal(
  lower: Float64Array,
  diagonal: Float64Array,
  upper: Float64Array,
  right: Float64Array,
): Float64Array {
  const count = right.length;
  const ratio = new Float64Array(count);
  ratio[0] = upper[0] / diagonal[0];
  right[0] = right[0] / diagonal[0];
  for (let i = 1; i < count; i++) {
    const pivot = diagonal[i] - lower[i] * ratio[i - 1];
    ratio[i] = upper[i] / pivot;
    right[i] = (right[i] - lower[i] * right[i - 1]) / pivot;
  }
  for (let i = count - 2; i >= 0; i--) right[i] = right[i] - ratio[i] * right[i + 1];
  return right;
}

export interface FusionNoise {
  /** standard deviation of the tilt of the accelerometer at each sample [rad] */
  readonly tiltSdRad: Float64Array;
  /** standard deviation of the drift of the integrated gyroscope over one second, at each sample [rad/s^0.5] */
  readonly driftSdRad: Float64Array;
}

/**
 * Angle from a tilt that is right on average and a rate that is right for a while: the path that stays near the tilt,
 * each sample according to its noise, and whose departure from the integrated rate wanders as little as the drift says.
 *
 * The most probable path of a random walk seen through noise, forward and backward in time (the fixed-interval
 * Kalman smoother), found as one tridiagonal system. A constant rate offset is part of the wandering.
 *
 * @param tilt - angle from the accelerometer, unwrapped enough that no two neighbours differ by more than pi [rad]
 * @param rate - angular velocity about the same axis and sense [rad/s]
 * @param sampleRateHz - samples per second, > 0 [Hz]
 * @param noise - how far to trust either, see {@link FusionNoise} [rad]
 * @returns the angle at each sample [rad]
 *
 * Source: Rauch, Tung & Striebel (1965), AIAA J 3:1445-1450, for a scalar random walk; tridiagonal form ours
 */
export function fuseTiltAndRate(
  tilt: Float64Array,
  rate: Float64Array,
  sampleRateHz: number,
  noise: FusionNoise,
): Float64Array {
  const count = tilt.length;
  const turned = new Float64Array(count);
  for (let i = 1; i < count; i++) turned[i] = turned[i - 1] + (rate[i] + rate[i - 1]) / 2 / sampleRateHz;
  // link i ties sample i to the one before
  const link = noise.driftSdRad.map((drift, i) => (i > 0 ? sampleRateHz / (drift * drift) : 0));
  const lower = link.map((value) => -value);
  const upper = link.map((_, i) => (i < count - 1 ? -link[i + 1] : 0));
  const diagonal = new Float64Array(count);
  const right = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const weight = 1 / (noise.tiltSdRad[i] * noise.tiltSdRad[i]);
    diagonal[i] = weight - lower[i] - upper[i];
    right[i] = weight * (tilt[i] - turned[i]);
  }
  const offset = solveTridiagonal(lower, diagonal, upper, right);
  return turned.map((angle, i) => angle + offset[i]);
}
