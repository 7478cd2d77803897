import type { Random } from './random.ts';

/** One step of a one-pole low-pass: share of the way to the new input [-]. */
function poleShare(cornerHz: number, sampleRateHz: number): number {
  return 1 - Math.exp((-2 * Math.PI * cornerHz) / sampleRateHz);
}

/**
 * Noise that is white below a corner and falls with 12 dB an octave above it.
 *
 * White Gaussian noise through the same one-pole low-pass twice.
 *
 * @param count - samples [-]
 * @param sampleRateHz - samples per second [Hz]
 * @param density - one-sided amplitude density far below the corner [unit/sqrt(Hz)]
 * @param cornerHz - frequency at which each of the two poles has lost 3 dB [Hz]
 * @param random - stream to draw from [-]
 * @returns samples [unit]
 *
 * Source: definition
 */
export function lowPassNoise(
  count: number,
  sampleRateHz: number,
  density: number,
  cornerHz: number,
  random: Random,
): Float64Array {
  const samples = new Float64Array(count);
  const step = density * Math.sqrt(sampleRateHz / 2);
  const share = poleShare(cornerHz, sampleRateHz);
  let first = 0;
  let second = 0;
  const settle = Math.ceil((2 * sampleRateHz) / cornerHz);
  for (let i = -settle; i < count; i++) {
    first += share * (step * random.gaussian() - first);
    second += share * (first - second);
    if (i >= 0) samples[i] = second;
  }
  return samples;
}

/**
 * One-sided power density of {@link lowPassNoise}.
 *
 * @param frequencyHz - where, below half the sampling rate [Hz]
 * @param sampleRateHz - samples per second of the generator [Hz]
 * @param density - amplitude density far below the corner [unit/sqrt(Hz)]
 * @param cornerHz - corner of each pole [Hz]
 * @returns power density [unit2/Hz]
 *
 * Source: definition; gain of a one-pole recursion, |a / (1 - (1 - a) e^{-iw})|
 */
export function lowPassNoiseDensity(
  frequencyHz: number,
  sampleRateHz: number,
  density: number,
  cornerHz: number,
): number {
  const share = poleShare(cornerHz, sampleRateHz);
  const kept = 1 - share;
  const turn = (2 * Math.PI * frequencyHz) / sampleRateHz;
  const gain = (share * share) / (1 - 2 * kept * Math.cos(turn) + kept * kept);
  return density * density * gain * gain;
}

/**
 * Sway of a standing body: reddish noise, a part in step with breathing, and a size that comes and goes.
 *
 * @param count - samples [-]
 * @param sampleRateHz - samples per second [Hz]
 * @param rms - root mean square of the whole record, exactly [unit]
 * @param cornerHz - frequency above which it falls, > 0 [Hz]
 * @param random - stream to draw from [-]
 * @returns samples with mean zero [unit]
 *
 * Source: ours; more power at low frequencies and a breathing part as standing sway has
 */
export function sway(count: number, sampleRateHz: number, rms: number, cornerHz: number, random: Random): Float64Array {
  const samples = lowPassNoise(count, sampleRateHz, 1, cornerHz, random);
  const slow = lowPassNoise(count, sampleRateHz, 1, 0.05, random);
  const breathHz = random.between(0.2, 0.35);
  const phase = random.between(0, 2 * Math.PI);
  const slowSize = 0.3 / (standardDeviation(slow) || 1);
  const noiseSize = 1 / (standardDeviation(samples) || 1);
  const breath = random.between(0.1, 0.4);
  for (let i = 0; i < count; i++) {
    const wave = breath * Math.SQRT2 * Math.sin((2 * Math.PI * breathHz * i) / sampleRateHz + phase);
    samples[i] = (samples[i] * noiseSize + wave) * Math.exp(slow[i] * slowSize);
  }
  const mean = samples.reduce((sum, value) => sum + value, 0) / Math.max(1, count);
  for (let i = 0; i < count; i++) samples[i] = samples[i] - mean;
  const size = rms / (standardDeviation(samples) || 1);
  for (let i = 0; i < count; i++) samples[i] = samples[i] * size;
  return samples;
}

function standardDeviation(samples: Float64Array): number {
  let sum = 0;
  for (const value of samples) sum += value;
  const mean = sum / samples.length;
  let squares = 0;
  for (const value of samples) squares += (value - mean) ** 2;
  return Math.sqrt(squares / samples.length);
}
