import { riseBetweenRests } from '../../movement/body-rise.ts';
import { mean } from '../../signal/moments.ts';
import { median } from '../../signal/order-statistics.ts';
import type { Agreed } from './consensus.ts';
import { type Rhythm, riseAt } from './rhythm.ts';
import type { BodySettings } from './settings.ts';

/** Rise of a repetition and its standard uncertainty. */
export interface RiseEstimate {
  readonly riseM: number;
  readonly uncertaintyM: number;
}

/** Acceleration from which rises are integrated. */
export interface RiseSignal {
  readonly startS: number;
  readonly sampleRateHz: number;
  /** upward acceleration [m/s2] */
  readonly upward: Float64Array;
}

/**
 * Power density of the noise at low frequency, on both sides of zero.
 *
 * @param rhythm - variance and coefficients of the noise [m2/s4]
 * @param settings - rate of the model grid [Hz]
 * @returns power density [m2/s4/Hz]
 *
 * Source: spectrum of an autoregressive process at zero frequency (definition)
 */
export function lowDensity(rhythm: Rhythm, settings: BodySettings): number {
  let gain = 1;
  for (const coefficient of rhythm.noiseCoefficients) gain -= coefficient;
  // an unstable estimate of the slowest part must not promise noise without bound
  return rhythm.noiseVariance / Math.max(0.15, gain) ** 2 / settings.modelRateHz;
}

/** Way between two rests, averaged over the inner part of the hold: its greatest value would add the noise to itself. */
function integratedRise(signal: RiseSignal, fromS: number, toS: number, one: Agreed): number | undefined {
  const { startS, sampleRateHz, upward } = signal;
  const indexOf = (timeS: number): number => Math.round((timeS - startS) * sampleRateHz);
  const from = Math.max(0, indexOf(fromS));
  const to = Math.min(upward.length, indexOf(toS) + 1);
  if (to - from < 8) return undefined;
  const way = riseBetweenRests(upward.subarray(from, to), sampleRateHz);
  const reachS = Math.max(0.03, 0.25 * (one.highToS - one.highFromS));
  const low = Math.max(0, indexOf(one.topS - reachS) - from);
  const high = Math.min(way.length, indexOf(one.topS + reachS) - from + 1);
  return high > low ? mean(way.subarray(low, high)) : undefined;
}

/**
 * Rises of the repetitions of a set and their uncertainties.
 *
 * Two measurements of each: the template's least-squares rise, which is the less noisy, and the acceleration integrated
 * from rest to rest, which knows no shape. Their ratio over the set corrects what the shape has in common; then each
 * repetition mixes both by their variances, and is drawn to the line of the set as far as noise demands.
 *
 * @param repetitions - agreed by the paths, in time order [s, m]
 * @param signal - acceleration on a regular grid [m/s2]
 * @param rhythm - level, spread and noise of the set [m, -]
 * @param settings - how far shapes differ in common and singly [-]
 * @returns one estimate for each repetition [m]
 *
 * Source: ours. Variance of the integral: white noise of density S, projected from constants and lines, S T^3 / 192
 */
export function riseEstimates(
  repetitions: readonly Agreed[],
  signal: RiseSignal,
  rhythm: Rhythm,
  settings: BodySettings,
): RiseEstimate[] {
  const density = lowDensity(rhythm, settings);
  const measured = repetitions.map((one, index) => {
    const durationS = one.endS - one.startS;
    const before = repetitions[index - 1]?.endS ?? -Infinity;
    const after = repetitions[index + 1]?.startS ?? Infinity;
    const earliestS = Math.min(one.startS, (before + one.startS) / 2);
    const latestS = Math.max(one.endS, (after + one.endS) / 2);
    const level = riseAt(rhythm, one.topS);
    // where the rests lie is not known exactly: three choices show what that is worth
    const choices = [-0.04, 0, 0.05]
      .map((pad) => pad * durationS)
      .map((pad) =>
        integratedRise(signal, Math.max(one.startS - pad, earliestS), Math.min(one.endS + pad, latestS), one),
      )
      .filter((rise) => rise !== undefined);
    const direct = one.gapShare > 1e-6 || choices.length < 3 ? undefined : median(choices);
    const ends = choices.length < 3 ? 0 : ((Math.max(...choices) - Math.min(...choices)) / 2) ** 2;
    const extra = Math.max(0, (density * durationS ** 3) / 192 - one.ownVariance) + ends;
    const single = (settings.shapeRiseShare * level) ** 2;
    return { one, level, direct, extra, single };
  });
  let ratio = 1 / settings.shapeRiseCommon ** 2;
  let weights = ratio;
  for (const { one, level, direct, extra, single } of measured) {
    if (direct === undefined || one.share < 0.8 || one.ownRiseM < 0.5 * level) continue;
    const weight = (one.ownRiseM * one.ownRiseM) / (extra + single);
    ratio += weight * Math.max(0.6, Math.min(1.6, direct / one.ownRiseM));
    weights += weight;
  }
  ratio /= weights;
  const ratioSpread = 1 / Math.sqrt(weights);
  return measured.map(({ one, level, direct, extra, single }) => {
    const share = direct === undefined ? 0 : single / (single + extra);
    const value = (1 - share) * ratio * one.ownRiseM + share * (direct ?? 0);
    const variance = one.ownVariance + (1 - share) ** 2 * single + share * share * extra;
    const spread = (rhythm.riseSpread * level * ratio) ** 2;
    const gain = spread / (spread + variance);
    const riseM = ratio * level + gain * (value - ratio * level);
    const common = (1 - share) * ratioSpread * level;
    return { riseM, uncertaintyM: Math.sqrt(gain * variance + common * common + (gain * one.ownSpreadM) ** 2) };
  });
}
