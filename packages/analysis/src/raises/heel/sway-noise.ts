import type { Interval } from '../../signal/intervals.ts';
import { mean } from '../../signal/moments.ts';
import { median } from '../../signal/order-statistics.ts';

/** How the level departs from a smooth move: slow sway and quick noise. */
export interface SwayNoise {
  /** standard deviation of the sway [m] */
  readonly swaySdM: number;
  /** time constant of either of its two low-pass stages [s] */
  readonly swayTimeS: number;
  /** standard deviation of the noise of one sample [m] */
  readonly whiteSdM: number;
}

/** Weights that turn departures into independent ones of unit size; see {@link foretell}. */
export interface Whitening {
  /** share of the state that is left after one sample [-] */
  readonly decay: number;
  /** how much of the inner state reaches the sway within one sample [-] */
  readonly passed: number;
  /** share of each surprise that is taken for inner state, and for sway, by sample [-] */
  readonly innerGain: Float64Array;
  readonly swayGain: Float64Array;
  /** one over the standard deviation of each surprise, by sample [1/m] */
  readonly scale: Float64Array;
}

/** Variances of the inner state and the sway, and their covariance, one sample later, without what comes in anew [m2]. */
const agedInner = (decay: number, inner: number): number => decay * decay * inner;
const agedBoth = (decay: number, passed: number, inner: number, both: number): number =>
  decay * (passed * inner + decay * both);
const agedSway = (decay: number, passed: number, inner: number, both: number, sway: number): number =>
  passed * passed * inner + 2 * passed * decay * both + decay * decay * sway;

/**
 * Whitening of a signal made of sway and noise: what each sample holds that could not be foretold from those before.
 *
 * Sway is taken for noise through two equal low-pass stages (it moves smoothly and forgets itself), so the innovations
 * of its Kalman filter are independent; their scale starts with the whole spread and settles within a few samples.
 *
 * @param noise - sway and noise, not both 0 [m, s]
 * @param intervalS - sample interval, > 0 [s]
 * @param seen - 1 for each sample that was recorded, 0 for one inside a gap: it tells nothing [-]
 * @returns gains and scales [-, 1/m]
 *
 * Source: Kalman (1960), J Basic Eng 82:35-45
 */
export function whitening(noise: SwayNoise, intervalS: number, seen: Float64Array): Whitening {
  const count = seen.length;
  const decay = Math.exp(-intervalS / noise.swayTimeS);
  const passed = (decay * intervalS) / noise.swayTimeS;
  const v = noise.swaySdM ** 2;
  const white = noise.whiteSdM ** 2;
  // In the long run the inner stage has twice the variance of the sway, and their covariance equals the latter.
  let [inner, both, sway] = [2 * v, v, v];
  // what one sample leaves of that comes in anew with the next
  const [innerLeft, bothLeft, swayLeft] = [
    agedInner(decay, inner),
    agedBoth(decay, passed, inner, both),
    agedSway(decay, passed, inner, both, sway),
  ];
  const innerGain = new Float64Array(count);
  const swayGain = new Float64Array(count);
  const scale = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const surprise = sway + white;
    if (seen[i] > 0) {
      innerGain[i] = both / surprise;
      swayGain[i] = sway / surprise;
      scale[i] = 1 / Math.sqrt(surprise);
    }
    inner -= innerGain[i] * both;
    both -= swayGain[i] * both;
    sway -= swayGain[i] * sway;
    sway = agedSway(decay, passed, inner, both, sway) + v - swayLeft;
    both = agedBoth(decay, passed, inner, both) + v - bothLeft;
    inner = agedInner(decay, inner) + 2 * v - innerLeft;
  }
  return { decay, passed, innerGain, swayGain, scale };
}

/** What the noise is taken for where no rest shows it, and what it is never taken to be less than. */
export interface NoiseRule {
  /** sway of a standing heel [m], and the time constant of either of its two low-pass stages [s] */
  readonly usualSwayM: number;
  readonly usualSwayTimeS: number;
  /** departures that no shape of the family explains, however still the sensor [m] */
  readonly leastSwayM: number;
  readonly leastWhiteM: number;
  /** the same for a foot sensor, whose tilt is low-passed [m] */
  readonly leastWhiteFootM: number;
}

/**
 * Sway and noise of the level, from the time at rest.
 *
 * The spread about the floor gives the sway, its likeness to itself a fifth of a second later the time it lasts, and
 * the second differences of neighbouring samples the quick noise. Few seconds of rest count together with what is usual.
 *
 * @param levelM - level [m]
 * @param startS - time of the first sample [s]
 * @param sampleRateHz - samples per second [Hz]
 * @param rests - stretches at rest [s]
 * @param floorAt - level at rest at an instant [m]
 * @param rule - what is usual, see {@link NoiseRule} [m, s]
 * @returns sway and noise [m, s]
 *
 * Source: ours (method of moments)
 */
export function measureNoise(
  levelM: Float64Array,
  startS: number,
  sampleRateHz: number,
  rests: readonly Interval[],
  floorAt: (timeS: number) => number,
  rule: NoiseRule,
): SwayNoise {
  const perBlock = Math.max(1, Math.round(blockS * sampleRateHz));
  const lag = Math.max(1, Math.round(0.2 / blockS));
  const [departures, bends, changes]: [number[], number[], number[]] = [[], [], []];
  for (const { fromS, toS } of rests) {
    const from = Math.max(0, Math.ceil((fromS - startS) * sampleRateHz));
    const to = Math.min(levelM.length, Math.floor((toS - startS) * sampleRateHz) + 1);
    const floor = floorAt((fromS + toS) / 2);
    const blocks: number[] = [];
    for (let i = from; i + perBlock <= to; i += perBlock) blocks.push(mean(levelM.subarray(i, i + perBlock)) - floor);
    departures.push(...blocks);
    for (let k = 1; k + 1 < blocks.length; k++) bends.push(Math.abs(blocks[k] - (blocks[k - 1] + blocks[k + 1]) / 2));
    for (let k = lag; k < blocks.length; k++) changes.push(Math.abs(blocks[k] - blocks[k - lag]));
  }
  // the middle of two neighbours carries half a variance: a bend has 1.5 of it, and 0.6745 is the median of |z|
  const bent = bends.length > 0 ? (median(bends) / 0.6745) ** 2 / 1.5 : 0;
  // Knocks and what is left of a movement must not pass for sway.
  const limit = departures.length > 0 ? Math.max(0.002, 4 * 1.4826 * median(departures.map(Math.abs))) : 0;
  const calm = departures.filter((here) => Math.abs(here) <= limit);
  const squares = calm.reduce((sum, here) => sum + here * here, 0);
  const calmS = calm.length * blockS;
  // Half the mean square of a change is what the sway forgets in that time; movement at the ends of a rest is left aside.
  const changed = changes.length > 0 ? (median(changes) / 0.6745) ** 2 / 2 : 0;
  const changesS = changes.length * blockS;
  const lagS = lag * blockS;
  let blockVariance = bent;
  let swaySdM = rule.usualSwayM;
  let swayTimeS = rule.usualSwayTimeS;
  // Sway bends a little too: what it bends is known once the sway is.
  for (let round = 0; round < 3; round++) {
    const variance =
      (squares * blockS + usualWeightS * (rule.usualSwayM ** 2 + blockVariance)) / (calmS + usualWeightS);
    swaySdM = Math.max(rule.leastSwayM, Math.sqrt(Math.max(0, variance - blockVariance)));
    const usual = swaySdM * swaySdM * (1 - likeAfter(lagS / rule.usualSwayTimeS));
    const forgot = (Math.max(0, changed - blockVariance) * changesS + usual * usualWeightS) / (changesS + usualWeightS);
    swayTimeS = lagS / agedTo(1 - forgot / (swaySdM * swaySdM));
    const times = blockS / swayTimeS;
    const ofSway = swaySdM * swaySdM * (1.5 - 2 * likeAfter(times) + 0.5 * likeAfter(2 * times));
    blockVariance = Math.max(0.1 * bent, bent - ofSway / 1.5);
  }
  const white = bends.length > 0 ? Math.sqrt(blockVariance * perBlock) : rule.leastWhiteM;
  return { swaySdM, swayTimeS, whiteSdM: Math.max(rule.leastWhiteM, white) };
}

/** Samples are taken together over this time, in which sway hardly moves and filters forget [s]; ours. */
const blockS = 0.06;

/** Seconds of rest that what is usual weighs as much as; ours. */
const usualWeightS = 1;

/** Likeness of two equal stages to themselves after so many time constants. */
function likeAfter(times: number): number {
  return (1 + times) * Math.exp(-times);
}

/** Number of time constants after which two equal stages are as like themselves as given: (1 + x) exp(-x). */
function agedTo(alike: number): number {
  let [low, high] = [0.1, 4];
  for (let step = 0; step < 40; step++) {
    const middle = (low + high) / 2;
    if (likeAfter(middle) > alike) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
