/** One-sided power density of the noise in the vertical acceleration [(m/s2)2/Hz]. */
export type NoiseDensity = (frequencyHz: number) => number;

/** Highest frequency of the sum: a heel raise holds nothing above it [Hz]. */
const highestHz = 12;

/**
 * Signal-to-noise ratio of one repetition with known timing at the output of its matched filter.
 *
 * SNR^2 = 4 * integral over f > 0 of |S(f)|^2 / N(f), where S is the Fourier transform of the vertical acceleration from
 * the start to the end of the repetition and N the one-sided density of all noise in it. Its reciprocal is the relative
 * error of the repetition's height when everything but the height is known.
 *
 * @param acceleration - vertical acceleration of the repetition without noise [m/s2]
 * @param sampleRateHz - samples per second [Hz]
 * @param noise - one-sided power density of the noise [(m/s2)2/Hz]
 * @returns ratio of amplitudes [-]
 *
 * Source: matched filter in coloured noise, Turin (1960), IRE Trans Inf Theory 6:311-329
 */
export function signalToNoise(acceleration: Float64Array, sampleRateHz: number, noise: NoiseDensity): number {
  const durationS = acceleration.length / sampleRateHz;
  const stepHz = Math.min(0.05, 0.25 / durationS);
  let sum = 0;
  for (let frequencyHz = stepHz / 2; frequencyHz < highestHz; frequencyHz += stepHz) {
    const turn = (2 * Math.PI * frequencyHz) / sampleRateHz;
    const [cosStep, sinStep] = [Math.cos(turn), Math.sin(turn)];
    let [cos, sin, real, imaginary] = [1, 0, 0, 0];
    for (const value of acceleration) {
      real += value * cos;
      imaginary += value * sin;
      [cos, sin] = [cos * cosStep - sin * sinStep, cos * sinStep + sin * cosStep];
    }
    const energy = (real * real + imaginary * imaginary) / (sampleRateHz * sampleRateHz);
    sum += (energy / noise(frequencyHz)) * stepHz;
  }
  return Math.sqrt(4 * sum);
}
