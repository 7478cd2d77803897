import { butterworthLowPass, twoPassCutoffHz } from './butterworth.ts';
import { filterZeroPhase } from './zero-phase.ts';

/** order of each of the two passes of {@link lowPassZeroPhase}; often called a fourth-order zero-lag filter */
const ORDER_PER_PASS = 2;

/**
 * A signal low-passed without lag: second-order Butterworth forward and backward, corrected so that the gain after both
 * passes is -3.01 dB at the cut-off.
 *
 * @param samples - the signal, regularly sampled, n >= 1, finite; left as it is [unit of samples]
 * @param sampleRateHz - samples per second, > 0 [Hz]
 * @param cutoffHz - frequency of half power, above 0 and below half the sampling rate [Hz]
 * @returns the filtered signal, same length [unit of samples]
 * @throws {@link InputError} `too-short` when n = 0; `not-finite` on NaN or infinity; `out-of-range` for the frequencies
 *
 * Source: Winter (2009), Biomechanics and Motor Control of Human Movement, 4th ed.
 */
export function lowPassZeroPhase(samples: Float64Array, sampleRateHz: number, cutoffHz: number): Float64Array {
  const passHz = twoPassCutoffHz(cutoffHz, sampleRateHz, ORDER_PER_PASS);
  return filterZeroPhase(butterworthLowPass(ORDER_PER_PASS, passHz, sampleRateHz), samples);
}
