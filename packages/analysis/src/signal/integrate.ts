import { requireRange } from '../check.ts';

/**
 * Running integral by the trapezoid rule; it starts at 0.
 *
 * @param samples - regularly sampled [unit of samples]
 * @param intervalS - time between two samples, > 0 [s]
 * @returns integral from the first sample to each sample, same length [unit of samples times s]
 * @throws {@link InputError} `out-of-range` for the interval
 *
 * Source: definition
 */
export function cumulativeTrapezoid(samples: Float64Array, intervalS: number): Float64Array {
  requireRange(intervalS, intervalS > 0, 'intervalS', '> 0');
  const integral = new Float64Array(samples.length);
  for (let i = 1; i < samples.length; i++) {
    integral[i] = integral[i - 1] + ((samples[i - 1] + samples[i]) / 2) * intervalS;
  }
  return integral;
}

/**
 * Integral by the trapezoid rule, over all samples.
 *
 * @param samples - regularly sampled; fewer than two hold no area [unit of samples]
 * @param intervalS - time between two samples, > 0 [s]
 * @returns the integral, 0 for fewer than two samples [unit of samples times s]
 * @throws {@link InputError} `out-of-range` for the interval
 *
 * Source: definition
 */
export function trapezoid(samples: ArrayLike<number>, intervalS: number): number {
  requireRange(intervalS, intervalS > 0, 'intervalS', '> 0');
  let sum = 0;
  for (let i = 1; i < samples.length; i++) sum += (samples[i - 1] + samples[i]) / 2;
  return sum * intervalS;
}
