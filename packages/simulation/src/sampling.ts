import type { FaultAmounts } from './fault-table.ts';
import type { Random } from './random.ts';

/** When the sensor looked, and what its stamps say. */
export interface SampleTimes {
  readonly trueS: Float64Array;
  readonly stampS: Float64Array;
  readonly sampleRateHz: number;
}

/**
 * Sample times of one sensor: regular, then jittered, then with packets and longer gaps lost.
 *
 * @param lengthS - length of the recording [s]
 * @param sampleRateHz - nominal rate [Hz]
 * @param faults - amounts of jitter, loss and gaps [unit of the row]
 * @param random - stream to draw from [-]
 * @returns true times and stamps of the samples that arrived, both rising [s]
 *
 * Source: ours
 */
export function drawSampleTimes(
  lengthS: number,
  sampleRateHz: number,
  faults: Pick<FaultAmounts, 'lossShare' | 'gapCount' | 'stampJitter'>,
  random: Random,
): SampleTimes {
  const count = Math.floor(lengthS * sampleRateHz);
  const lost = new Uint8Array(count);
  const packet = random.integer(1, Math.max(1, Math.floor(0.15 * sampleRateHz)));
  for (let i = 0; i < count; i += packet) if (random.chance(faults.lossShare)) lost.fill(1, i, i + packet);
  for (let left = Math.round(faults.gapCount); left > 0; left--) {
    const from = Math.floor(random.between(0.1, 0.9) * count);
    lost.fill(1, from, from + Math.round(random.between(0.3, 0.8) * sampleRateHz));
  }
  lost[0] = 0;
  const sampledUnevenly = random.chance(0.5); // half of the sensors jitter in sampling, half in stamping only
  const trueS: number[] = [];
  const stampS: number[] = [];
  for (let i = 0; i < count; i++) {
    const jitter = Math.max(-0.45, Math.min(0.45, faults.stampJitter * random.gaussian())) / sampleRateHz;
    if (lost[i] === 1) continue;
    const regular = i / sampleRateHz;
    const stamp = Math.max(0, regular + jitter);
    trueS.push(sampledUnevenly ? stamp : regular);
    stampS.push(stamp);
  }
  return { trueS: Float64Array.from(trueS), stampS: Float64Array.from(stampS), sampleRateHz };
}

/**
 * Values of a world signal at given times, straight between its grid points.
 *
 * @param signal - on the grid of the world [unit]
 * @param world - gives the rate [Hz]
 * @param timesS - when [s]
 * @returns values [unit]
 *
 * Source: definition
 */
export function sampleAt(
  signal: Float64Array,
  world: { readonly sampleRateHz: number },
  timesS: Float64Array,
): Float64Array {
  const last = signal.length - 1;
  return timesS.map((timeS) => {
    const place = Math.min(last, timeS * world.sampleRateHz);
    const index = Math.min(last - 1, Math.floor(place));
    const share = place - index;
    return signal[index] * (1 - share) + signal[index + 1] * share;
  });
}

/**
 * What an analogue-to-digital converter makes of a signal: bounded by the range, in equal steps.
 *
 * @param samples - signal; changed in place [unit]
 * @param low - least value that can be read [unit]
 * @param high - greatest value [unit]
 * @param bits - steps over the range, as a power of two [bit]
 *
 * Source: definition
 */
export function convert(samples: Float64Array, low: number, high: number, bits: number): void {
  const step = (high - low) / 2 ** bits;
  for (let i = 0; i < samples.length; i++) {
    const bounded = Math.min(high - step, Math.max(low, samples[i]));
    samples[i] = low + step * Math.round((bounded - low) / step);
  }
}

/**
 * White Gaussian noise, added to a signal.
 *
 * @param samples - changed in place [unit]
 * @param sd - standard deviation of each sample [unit]
 * @param random - stream to draw from [-]
 *
 * Source: definition
 */
export function addWhite(samples: Float64Array, sd: number, random: Random): void {
  for (let i = 0; i < samples.length; i++) samples[i] = samples[i] + sd * random.gaussian();
}

/**
 * Wild single samples, put into a signal.
 *
 * @param samples - channels, changed in place [unit]
 * @param timesS - their times [s]
 * @param perMinute - how many of them, over all channels [1/min]
 * @param size - how far away at most [unit]
 * @param random - stream to draw from [-]
 *
 * Source: ours
 */
export function addSpikes(
  samples: readonly Float64Array[],
  timesS: Float64Array,
  perMinute: number,
  size: number,
  random: Random,
): void {
  const lengthS = timesS[timesS.length - 1] - timesS[0];
  const expected = (perMinute * lengthS) / 60;
  const count = Math.floor(expected) + (random.chance(expected % 1) ? 1 : 0);
  for (let left = count; left > 0; left--) {
    const channel = samples[random.integer(0, samples.length - 1)];
    const index = random.integer(0, channel.length - 1);
    channel[index] = channel[index] + size * random.between(0.3, 1) * (random.chance(0.5) ? 1 : -1);
  }
}
