import { median } from '../signal/order-statistics.ts';

export interface SlipRule {
  /** stretch on either side that is compared [s] */
  readonly sideS: number;
  /** smallest turn of the sensor that is told from noise [rad] */
  readonly leastRad: number;
  /** greater turns are put down to a gyroscope that lost its way, not to a slip [rad] */
  readonly greatestRad: number;
}

/** A turn of the sensor against the foot. */
export interface Slip {
  readonly index: number;
  readonly turnRad: number;
}

/**
 * Instants at which an inertial sensor turned against the foot: the tilt steps while the gyroscope felt no turn.
 *
 * The difference of the two is compared before and after each instant, over a few seconds on either side. What goes
 * with a violent shake is left alone: there the gyroscope may have missed a turn of the foot itself.
 *
 * @param difference - tilt minus integrated rate, a steady drift taken off [rad]
 * @param weights - how far to trust each sample: near 1 when calm, near 0 when shaken or in a gap [-]
 * @param trusted - 0 where the integrated rate is not known, in long gaps; no comparison reaches across [-]
 * @param sampleRateHz - samples per second [Hz]
 * @param rule - see {@link SlipRule} [s, rad]
 * @returns slips in time order [index, rad]
 *
 * Source: ours (two-sample change point; Basseville & Nikiforov 1993, ch. 2)
 */
export function findSlips(
  difference: Float64Array,
  weights: Float64Array,
  trusted: Float64Array,
  sampleRateHz: number,
  rule: SlipRule,
): Slip[] {
  const count = difference.length;
  const side = Math.round(rule.sideS * sampleRateHz);
  const mass = new Float64Array(count + 1);
  const sum = new Float64Array(count + 1);
  const lost = new Float64Array(count + 1);
  for (let i = 0; i < count; i++) {
    mass[i + 1] = mass[i] + weights[i];
    lost[i + 1] = lost[i] + (trusted[i] > 0 ? 0 : 1);
    sum[i + 1] = sum[i] + weights[i] * difference[i];
  }
  const jump = new Float64Array(count);
  const stride = Math.max(1, Math.round(sampleRateHz / 25));
  const sizes: number[] = [];
  for (let i = side; i < count - side; i += stride) {
    const before = mass[i] - mass[i - side];
    const after = mass[i + side] - mass[i];
    if (before < side / 3 || after < side / 3 || lost[i + side] > lost[i - side]) continue;
    jump[i] = (sum[i + side] - sum[i]) / after - (sum[i] - sum[i - side]) / before;
    sizes.push(Math.abs(jump[i]));
  }
  if (sizes.length === 0) return [];
  const limit = Math.max(rule.leastRad, 6 * median(sizes));
  const slips: Slip[] = [];
  for (let i = side; i < count - side; i += stride) {
    if (Math.abs(jump[i]) < limit) continue;
    let best = i;
    let end = i;
    for (let k = i; k < Math.min(count - side, end + side); k += stride) {
      if (Math.abs(jump[k]) < limit) continue;
      end = k;
      if (Math.abs(jump[k]) > Math.abs(jump[best])) best = k;
    }
    if (Math.abs(jump[best]) <= rule.greatestRad) slips.push({ index: best, turnRad: jump[best] });
    i = end + side;
  }
  return slips;
}

/**
 * A tilt without the slips of its sensor.
 *
 * @param tilt - tilt [rad]
 * @param slips - from {@link findSlips} [index, rad]
 * @returns tilt as if the sensor had stayed [rad]
 *
 * Source: definition
 */
export function withoutSlips(tilt: Float64Array, slips: readonly Slip[]): Float64Array {
  let turned = 0;
  let next = 0;
  return tilt.map((value, i) => {
    while (next < slips.length && slips[next].index <= i) turned += slips[next++].turnRad;
    return value - turned;
  });
}
