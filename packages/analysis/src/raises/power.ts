import { requireRange } from '../check.ts';
import type { Motion } from './detection.ts';
import { type MovementRate, samplesBetween, smoothRuns } from './movement-rate.ts';

/** What drives the movement: a force that was measured, or a mass that is moved against gravity. */
export type Load =
  | { readonly kind: 'force'; readonly forceN: Float64Array }
  | { readonly kind: 'mass'; readonly massKg: number; readonly gravityMps2: number };

/**
 * Mechanical power of the movement at each sample: force times velocity, low-passed without lag. For a mass the force is
 * mass times gravity plus its own acceleration.
 *
 * @param motion - the movement [m]
 * @param rate - its velocity and acceleration on the same grid [m/s, m/s2]
 * @param load - measured force, or mass [N, kg]
 * @param cutoffHz - frequency of half power of the low-pass [Hz]
 * @returns power on the grid of the motion, NaN where nothing is known [W]
 *
 * Source: Winter (2009), Biomechanics and Motor Control of Human Movement, 4th ed.
 */
export function powerTrace(motion: Motion, rate: MovementRate, load: Load, cutoffHz: number): Float64Array {
  const power = new Float64Array(motion.heightM.length);
  for (let i = 0; i < power.length; i++) {
    // P = F v, or (m + m_e)(g + a) v
    const force = load.kind === 'force' ? load.forceN[i] : load.massKg * (load.gravityMps2 + rate.accelerationMps2[i]);
    power[i] = force * rate.velocityMps[i];
  }
  return smoothRuns(power, motion.sampleRateHz, cutoffHz);
}

/**
 * Greatest power between two instants.
 *
 * @param motion - whose grid the power is on [s]
 * @param power - power on that grid [W]
 * @param fromS - start [s]
 * @param toS - end, after the start [s]
 * @returns the greatest value; undefined when a sample is missing or none lies between [W]
 * @throws {@link InputError} `out-of-range` when the end is before the start
 *
 * Source: definition
 */
export function peakPower(motion: Motion, power: Float64Array, fromS: number, toS: number): number | undefined {
  requireRange(toS, toS >= fromS, 'toS', '>= fromS');
  const { fromIndex, toIndex } = samplesBetween(motion, fromS, toS);
  let peak = Number.NEGATIVE_INFINITY;
  for (let i = fromIndex; i < toIndex; i++) {
    if (!Number.isFinite(power[i])) return undefined;
    peak = Math.max(peak, power[i]);
  }
  return Number.isFinite(peak) ? peak : undefined;
}
