import { derivative } from '../signal/derivative.ts';
import { lowPassZeroPhase } from '../signal/lowpass.ts';
import type { Motion } from './detection.ts';

/** shortest run of samples that a zero-phase filter is applied to */
const LEAST_RUN = 8;

/** Velocity and acceleration of what moved, on its own grid; NaN where nothing can be said. */
export interface MovementRate {
  readonly velocityMps: Float64Array;
  readonly accelerationMps2: Float64Array;
}

function eachFiniteRun(samples: Float64Array, act: (from: number, to: number) => void): void {
  let from = 0;
  for (let i = 0; i <= samples.length; i++) {
    if (i < samples.length && Number.isFinite(samples[i])) continue;
    if (i - from >= LEAST_RUN) act(from, i);
    from = i + 1;
  }
}

/**
 * Signal low-passed without lag in each run without gaps; NaN elsewhere.
 *
 * @param samples - regularly sampled, NaN where nothing is known [unit of samples]
 * @param sampleRateHz - samples per second, > 0 [Hz]
 * @param cutoffHz - frequency of half power; where the grid cannot hold it the samples stay as they are [Hz]
 * @returns filtered samples, same length [unit of samples]
 *
 * Source: Winter (2009), Biomechanics and Motor Control of Human Movement, 4th ed.
 */
export function smoothRuns(samples: Float64Array, sampleRateHz: number, cutoffHz: number): Float64Array {
  const smooth = new Float64Array(samples.length).fill(Number.NaN);
  eachFiniteRun(samples, (from, to) => {
    const run = samples.slice(from, to);
    smooth.set(cutoffHz < sampleRateHz / 2 ? lowPassZeroPhase(run, sampleRateHz, cutoffHz) : run, from);
  });
  return smooth;
}

/**
 * Upward velocity and acceleration of what moved, low-passed without lag in each run without gaps.
 *
 * @param motion - height on a regular grid [m]
 * @param cutoffHz - frequency of half power of the low-pass [Hz]
 * @returns velocity and acceleration on the same grid, NaN where nothing is known [m/s, m/s2]
 *
 * Source: Winter (2009), Biomechanics and Motor Control of Human Movement, 4th ed. (central differences)
 */
export function movementRate(motion: Motion, cutoffHz: number): MovementRate {
  const { heightM, sampleRateHz } = motion;
  const velocityMps = new Float64Array(heightM.length).fill(Number.NaN);
  const accelerationMps2 = new Float64Array(heightM.length).fill(Number.NaN);
  const smooth = smoothRuns(heightM, sampleRateHz, cutoffHz);
  eachFiniteRun(smooth, (from, to) => {
    const velocity = derivative(smooth.slice(from, to), sampleRateHz);
    velocityMps.set(velocity, from);
    accelerationMps2.set(derivative(velocity, sampleRateHz), from);
  });
  return { velocityMps, accelerationMps2 };
}

/** A range of samples, half-open. */
export interface SampleRange {
  readonly fromIndex: number;
  readonly toIndex: number;
}

/**
 * Samples of a motion that lie in a span of time.
 *
 * @param motion - anything on a regular grid [s]
 * @param fromS - start of the span on the recording's clock [s]
 * @param toS - end of the span [s]
 * @returns half-open range with both ends of the span in it, empty when the span holds no sample [-]
 *
 * Source: definition
 */
export function samplesBetween(
  motion: Pick<Motion, 'startS' | 'sampleRateHz' | 'heightM'>,
  fromS: number,
  toS: number,
): SampleRange {
  const last = motion.heightM.length;
  // a hair of tolerance, so that an instant on the grid stays on it in floating point
  const position = (timeS: number): number => (timeS - motion.startS) * motion.sampleRateHz;
  const fromIndex = Math.min(Math.max(Math.ceil(position(fromS) - 1e-6), 0), last);
  return { fromIndex, toIndex: Math.max(fromIndex, Math.min(Math.floor(position(toS) + 1e-6) + 1, last)) };
}
