import { requireCount, requireFinite, requireRange } from '../check.ts';
import { cumulativeTrapezoid } from '../signal/integrate.ts';

/** How a movement between two rests went. */
export interface RestToRest {
  /** velocity, 0 at the first and at the last sample [m/s] */
  readonly velocity: Float64Array;
  /** displacement from the first sample [m] */
  readonly displacementM: Float64Array;
  /** what was taken off as the sensor's bias [m/s2] */
  readonly biasMs2: number;
}

/**
 * Velocity and displacement between two instants of rest, from acceleration along one line.
 *
 * A constant bias shows as a velocity left over at the end, where there is none: it is taken off. With `end` `same-level`
 * the body is back where it started, and the displacement left over is taken off as a straight line in time; the
 * velocity keeps its zero ends.
 *
 * @param acceleration - acceleration along the line, gravity removed, at rest at both ends, n >= 2, finite [m/s2]
 * @param sampleRateHz - samples per second, > 0 [Hz]
 * @param end - `same-level` when the movement ends where it started, `anywhere` when it need not [-]
 * @returns velocity, displacement and the bias that was taken off [m/s, m, m/s2]
 * @throws {@link InputError} `too-short` when n < 2; `not-finite` on NaN or infinity; `out-of-range` for the rate
 *
 * Source: zero-velocity update, common practice; ours as far as the straight line is concerned
 */
export function restToRest(
  acceleration: Float64Array,
  sampleRateHz: number,
  end: 'same-level' | 'anywhere',
): RestToRest {
  requireCount(acceleration, 2, 'acceleration');
  requireFinite(acceleration, 'acceleration');
  requireRange(sampleRateHz, sampleRateHz > 0, 'sampleRateHz', '> 0');
  const intervalS = 1 / sampleRateHz;
  const last = acceleration.length - 1;
  const drifting = cumulativeTrapezoid(acceleration, intervalS);
  // the mean over time of the trapezoid rule, so that the velocity ends at zero to the last digit
  const biasMs2 = drifting[last] / (last * intervalS);
  const velocity = drifting.map((value, i) => value - biasMs2 * i * intervalS);
  velocity[last] = 0;
  const displacementM = cumulativeTrapezoid(velocity, intervalS);
  if (end === 'same-level') {
    const leftM = displacementM[last];
    for (let i = 0; i <= last; i++) displacementM[i] -= (leftM * i) / last;
    displacementM[last] = 0;
  }
  return { velocity, displacementM, biasMs2 };
}
