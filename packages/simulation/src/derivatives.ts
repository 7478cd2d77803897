/**
 * Second derivative of a regularly sampled signal by central differences; the ends repeat their neighbours.
 *
 * @param samples - signal, n >= 3 [unit]
 * @param sampleRateHz - samples per second [Hz]
 * @returns second derivative [unit/s2]
 *
 * Source: definition
 */
export function secondDerivative(samples: Float64Array, sampleRateHz: number): Float64Array {
  const result = new Float64Array(samples.length);
  const square = sampleRateHz * sampleRateHz;
  for (let i = 1; i < samples.length - 1; i++) {
    result[i] = (samples[i + 1] - 2 * samples[i] + samples[i - 1]) * square;
  }
  result[0] = result[1]!;
  result[samples.length - 1] = result[samples.length - 2]!;
  return result;
}

/**
 * First derivative of a regularly sampled signal by central differences; the ends repeat their neighbours.
 *
 * @param samples - signal, n >= 3 [unit]
 * @param sampleRateHz - samples per second [Hz]
 * @returns derivative [unit/s]
 *
 * Source: definition
 */
export function firstDerivative(samples: Float64Array, sampleRateHz: number): Float64Array {
  const result = new Float64Array(samples.length);
  for (let i = 1; i < samples.length - 1; i++) result[i] = ((samples[i + 1] - samples[i - 1]) * sampleRateHz) / 2;
  result[0] = result[1]!;
  result[samples.length - 1] = result[samples.length - 2]!;
  return result;
}
