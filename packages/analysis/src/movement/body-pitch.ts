import type { Interval } from '../signal/intervals.ts';
import { lowPassZeroPhase } from '../signal/lowpass.ts';
import { median } from '../signal/order-statistics.ts';

/**
 * Angle of the trunk from its posture at rest: between gravity as the sensor feels it now and in the quiet stance.
 *
 * Without sign, because the mounting is unknown; the low-pass leaves out what the body's own acceleration adds.
 *
 * @param axes - specific force of three axes on a regular grid [m/s2]
 * @param sampleRateHz - of the grid [Hz]
 * @param startS - time of the first sample [s]
 * @param rest - quiet stance that defines zero; the whole recording when it is unknown [s]
 * @param cutoffHz - zero-lag low-pass [Hz]
 * @returns angle at each sample, >= 0 [rad]
 *
 * Source: definition (angle between two vectors)
 */
export function trunkPitch(
  axes: readonly Float64Array[],
  sampleRateHz: number,
  startS: number,
  rest: Interval | undefined,
  cutoffHz: number,
): Float64Array {
  const slow = axes.map((axis) => lowPassZeroPhase(axis, sampleRateHz, cutoffHz));
  const count = slow[0].length;
  const indexOf = (timeS: number): number => Math.max(0, Math.min(count, Math.round((timeS - startS) * sampleRateHz)));
  let [from, to] = rest === undefined ? [0, count] : [indexOf(rest.fromS), indexOf(rest.toS)];
  if (to <= from) [from, to] = [0, count];
  const zero = slow.map((axis) => median(axis.subarray(from, to)));
  const zeroSize = Math.hypot(...zero);
  const [x, y, z] = slow;
  return Float64Array.from(x, (value, i) => {
    const size = Math.hypot(value, y[i], z[i]) * zeroSize;
    if (size === 0) return 0;
    // the cross product keeps small angles that the arc cosine rounds away
    const cross = Math.hypot(
      y[i] * zero[2] - z[i] * zero[1],
      z[i] * zero[0] - value * zero[2],
      value * zero[1] - y[i] * zero[0],
    );
    return Math.atan2(cross, value * zero[0] + y[i] * zero[1] + z[i] * zero[2]);
  });
}
