import { requireCount, requireFinite } from '../check.ts';

/**
 * Arithmetic mean.
 *
 * @param samples - values, n >= 1, finite [unit of samples]
 * @returns the mean [unit of samples]
 * @throws {@link InputError} `too-short` when n = 0; `not-finite` on NaN or infinity
 *
 * Source: definition
 */
export function mean(samples: ArrayLike<number>): number {
  requireCount(samples, 1, 'samples');
  requireFinite(samples, 'samples');
  let sum = 0;
  for (let i = 0; i < samples.length; i++) sum += samples[i];
  return sum / samples.length;
}

/**
 * Variance of a sample: squared deviations from the mean over n - 1, in two passes so that a large mean costs no digits.
 *
 * @param samples - values, n >= 2, finite [unit of samples]
 * @returns the variance [unit of samples squared]
 * @throws {@link InputError} `too-short` when n < 2; `not-finite` on NaN or infinity
 *
 * Source: definition
 */
export function variance(samples: ArrayLike<number>): number {
  requireCount(samples, 2, 'samples');
  const centre = mean(samples);
  let sum = 0;
  for (let i = 0; i < samples.length; i++) sum += (samples[i] - centre) ** 2;
  return sum / (samples.length - 1);
}

/**
 * Standard deviation of a sample, the root of {@link variance}.
 *
 * @param samples - values, n >= 2, finite [unit of samples]
 * @returns the standard deviation [unit of samples]
 * @throws {@link InputError} `too-short` when n < 2; `not-finite` on NaN or infinity
 *
 * Source: definition
 */
export function standardDeviation(samples: ArrayLike<number>): number {
  return Math.sqrt(variance(samples));
}

/**
 * Root of the mean square; the mean is not taken off.
 *
 * @param samples - values, n >= 1, finite [unit of samples]
 * @returns the root mean square [unit of samples]
 * @throws {@link InputError} `too-short` when n = 0; `not-finite` on NaN or infinity
 *
 * Source: definition
 */
export function rootMeanSquare(samples: ArrayLike<number>): number {
  requireCount(samples, 1, 'samples');
  requireFinite(samples, 'samples');
  let sum = 0;
  for (let i = 0; i < samples.length; i++) sum += samples[i] ** 2;
  return Math.sqrt(sum / samples.length);
}
