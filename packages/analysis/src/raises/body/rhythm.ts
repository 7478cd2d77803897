import type { RiseComponent } from './rise-evidence.ts';
import type { BodySettings } from './settings.ts';

/** What is believed about a set: how high, how long, how regular, in how much noise. Levels may drift along a line. */
export interface Rhythm {
  /** time at which the lines below hold their level [s] */
  readonly centreS: number;
  /** rise of the body [m] and its change [m/s]; its spread and the misfit of the shape, as shares [-] */
  readonly riseM: number;
  readonly riseSlope: number;
  readonly riseSpread: number;
  readonly shapeMisfit: number;
  /** log duration of a repetition and its change [-, 1/s]; its spread [-] */
  readonly logDuration: number;
  readonly logDurationSlope: number;
  readonly logDurationSpread: number;
  /** share held at the top, log of fall over rise, and their spreads [-] */
  readonly holdShare: number;
  readonly holdSpread: number;
  readonly logFallRatio: number;
  readonly logFallSpread: number;
  /** log of the time from start to next start, its change and spread [-, 1/s, -] */
  readonly logCycle: number;
  readonly logCycleSlope: number;
  readonly logCycleSpread: number;
  /** mean rest at the bottom between repetitions that follow each other [s] */
  readonly restS: number;
  /** share of gaps that are pauses, of repetitions that dip, and of repetitions that end the set [-] */
  readonly pauseShare: number;
  readonly dipShare: number;
  readonly endShare: number;
  /** variance of the whitened noise [m2/s4] and the whitening filter's coefficients [-] */
  readonly noiseVariance: number;
  readonly noiseCoefficients: Float64Array;
}

/**
 * What is believed about a set before it is seen.
 *
 * @param settings - the priors [-]
 * @param centreS - middle of the recording on the model grid [s]
 * @param noiseVariance - first guess at the variance of the noise, > 0 [m2/s4]
 * @returns a broad rhythm without drift, noise white [-]
 *
 * Source: ours
 */
export function priorRhythm(settings: BodySettings, centreS: number, noiseVariance: number): Rhythm {
  const logDuration = Math.log(settings.typicalDurationS);
  return {
    centreS,
    riseM: settings.typicalRiseM,
    riseSlope: 0,
    riseSpread: settings.typicalRiseSpread,
    shapeMisfit: settings.shapeMisfit,
    logDuration,
    logDurationSlope: 0,
    logDurationSpread: settings.typicalDurationSpread,
    holdShare: 0.2,
    holdSpread: 0.25,
    logFallRatio: 0,
    logFallSpread: 0.4,
    logCycle: logDuration + 0.2,
    logCycleSlope: 0,
    logCycleSpread: settings.typicalDurationSpread,
    restS: 0.4,
    pauseShare: settings.pauseShare,
    dipShare: settings.dipShare,
    endShare: 1 / settings.typicalSetSize,
    noiseVariance,
    noiseCoefficients: new Float64Array(0),
  };
}

/**
 * Rise that the set's line expects.
 *
 * @param rhythm - what is believed about the set [m, m/s]
 * @param timeS - when [s]
 * @returns rise, never below a quarter of the set's level [m]
 *
 * Source: ours
 */
export function riseAt(rhythm: Rhythm, timeS: number): number {
  return Math.max(0.25 * rhythm.riseM, rhythm.riseM + rhythm.riseSlope * (timeS - rhythm.centreS));
}

/** Share of repetitions whose height is unlike the rest, and how low and wide those lie as shares of the level. */
const ODD_SHARE = 0.06;
const ODD_LEVEL = 0.7;
const ODD_SPREAD = 0.3;
/** Share of repetitions whose shape is further from every template, and how much further. */
const ODD_SHAPE_SHARE = 0.1;
const ODD_SHAPE_FACTOR = 1.8;

/**
 * The ways in which rise and shape of a repetition may be spread at a time: like the set or odd, each near or far in shape.
 *
 * @param rhythm - what is believed about the set [m, -]
 * @param leastRiseM - least rise of a repetition [m]
 * @param timeS - when [s]
 * @returns four components whose shares sum to one [m]
 *
 * Source: ours
 */
export function repetitionComponents(rhythm: Rhythm, leastRiseM: number, timeS: number): RiseComponent[] {
  const level = riseAt(rhythm, timeS);
  const least = Math.min(leastRiseM, 0.25 * level);
  const spread = rhythm.riseSpread * level;
  const misfit = rhythm.shapeMisfit * level;
  const odd = { level: ODD_LEVEL * level, spread: Math.max(spread, ODD_SPREAD * level) };
  return [
    { logShare: Math.log((1 - ODD_SHARE) * (1 - ODD_SHAPE_SHARE)), level, spread, least, misfit },
    { logShare: Math.log(ODD_SHARE * (1 - ODD_SHAPE_SHARE)), ...odd, least, misfit },
    { logShare: Math.log((1 - ODD_SHARE) * ODD_SHAPE_SHARE), level, spread, least, misfit: ODD_SHAPE_FACTOR * misfit },
    { logShare: Math.log(ODD_SHARE * ODD_SHAPE_SHARE), ...odd, least, misfit: ODD_SHAPE_FACTOR * misfit },
  ];
}
