import { requireCount, requireRange } from '../check.ts';

/**
 * Rate of change by central differences; one-sided at the two ends.
 *
 * @param samples - regularly sampled, n >= 2 [unit of samples]
 * @param sampleRateHz - samples per second, > 0 [Hz]
 * @returns rate of change at each sample, same length [unit of samples per s]
 * @throws {@link InputError} `too-short` when n < 2; `out-of-range` for the rate
 *
 * Source: definition
 */
export function derivative(samples: Float64Array, sampleRateHz: number): Float64Array {
  requireCount(samples, 2, 'samples');
  requireRange(sampleRateHz, sampleRateHz > 0, 'sampleRateHz', '> 0');
  const last = samples.length - 1;
  const rate = new Float64Array(samples.length);
  rate[0] = (samples[1] - samples[0]) * sampleRateHz;
  for (let i = 1; i < last; i++) rate[i] = ((samples[i + 1] - samples[i - 1]) / 2) * sampleRateHz;
  rate[last] = (samples[last] - samples[last - 1]) * sampleRateHz;
  return rate;
}
