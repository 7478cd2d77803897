import { median } from '../../signal/order-statistics.ts';
import type { Agreed } from './consensus.ts';
import { jointFit } from './joint-fit.ts';
import type { JointScales, SetMeans } from './joint-prior.ts';
import { type Rhythm, riseAt } from './rhythm.ts';
import type { RiseEstimate } from './rise-estimates.ts';
import type { ModelSignal } from './round.ts';
import { type Cells, EACH, type MovedRepetition } from './set-moves.ts';
import type { BodySettings } from './settings.ts';
import { type Whitened, whiten } from './whitening.ts';

/** A set with the times and rises that its repetitions together speak for. */
export interface JointTiming {
  readonly repetitions: readonly Agreed[];
  readonly rises: readonly RiseEstimate[];
}

/** Share of its paths that hold a dip above which a repetition is no plain up and down [-]. */
const MOST_DIP_SHARE = 0.3;
/** Shortest move with which a fit begins [s]. */
const SHORTEST_MOVE_S = 0.15;
/** Standing before and after the set that takes part in the fit [s]. */
const MARGIN_S = 0.6;

/** The recording where repetitions explain it: about the set, without those that dip at the top. */
function fittedCells(
  repetitions: readonly Agreed[],
  used: readonly Agreed[],
  signal: ModelSignal,
  rhythm: Rhythm,
  settings: BodySettings,
): Whitened {
  const cellOf = (timeS: number): number =>
    Math.max(0, Math.min(signal.acceleration.length, Math.round((timeS - signal.startS) * settings.modelRateHz)));
  const present = Uint8Array.from(signal.present);
  present.fill(0, 0, cellOf(used[0].startS - MARGIN_S));
  present.fill(0, cellOf(used[used.length - 1].endS + MARGIN_S));
  for (const one of repetitions) {
    if (one.dipShare >= MOST_DIP_SHARE && one.share >= settings.jointLeastShare)
      present.fill(0, cellOf(one.startS), cellOf(one.endS));
  }
  return whiten(signal.acceleration, present, rhythm.noiseCoefficients);
}

/** Where the fit begins: all repetitions alike, each about its own middle. */
function beginning(
  used: readonly Agreed[],
  rhythm: Rhythm,
  durationS: number,
): { repetitions: MovedRepetition[]; means: SetMeans } {
  const riseS = median(used.map((one) => Math.max(SHORTEST_MOVE_S, one.highFromS - one.startS)));
  const holdS = median(used.map((one) => one.highToS - one.highFromS));
  const fallS = median(used.map((one) => Math.max(SHORTEST_MOVE_S, one.endS - one.highToS)));
  const rests = used.slice(1).map((one, k) => one.startS - used[k].endS);
  const following = rests.filter((restS) => restS < durationS).map((restS) => Math.max(0, restS));
  const repetitions = used.map((one, k) => ({
    startS: (one.startS + one.endS - riseS - holdS - fallS) / 2,
    logRise: Math.log(riseS),
    holdS,
    logFall: Math.log(fallS),
    topM: riseAt(rhythm, one.topS),
    bottomM: 0,
    joined: k < rests.length && rests[k] < durationS,
  }));
  const means = {
    logRise: Math.log(riseS),
    holdS,
    logFall: Math.log(fallS),
    logSlope: 0,
    riseM: rhythm.riseM,
    riseSlopeM: 0,
    restS: following.length === 0 ? 0.1 * durationS : median(following),
  };
  return { repetitions, means };
}

/**
 * Repetitions with times and rises from a fit of the whole set at once.
 *
 * The paths say which repetitions there are. Here all of them are fitted together: each with its own start, parts and
 * levels, all with one shape of their moves, up and down nearly mirrored, whatever that shape is. What one repetition
 * cannot tell in its noise the others lend it. Repetitions that dip at the top keep the times and rises that they had.
 *
 * @param repetitions - agreed by the paths, in time order [s, m]
 * @param rises - of the same repetitions, each by itself [m]
 * @param signal - acceleration on the model grid [m/s2]
 * @param rhythm - level, spread and noise of the set [m, m2/s4]
 * @param settings - priors of the fit [-]
 * @returns the same repetitions and rises, with standard uncertainties, in the same order [s, m]
 *
 * Source: ours
 */
export function jointTiming(
  repetitions: readonly Agreed[],
  rises: readonly RiseEstimate[],
  signal: ModelSignal,
  rhythm: Rhythm,
  settings: BodySettings,
): JointTiming {
  const taken = repetitions.map((one) => one.share >= settings.jointLeastShare && one.dipShare < MOST_DIP_SHARE);
  const used = repetitions.filter((_, index) => taken[index]);
  if (used.length === 0) return { repetitions, rises };
  const durationS = median(used.map((one) => one.endS - one.startS));
  const { samples, present } = fittedCells(repetitions, used, signal, rhythm, settings);
  const begin = beginning(used, rhythm, durationS);
  const starts = begin.repetitions.map((one) => one.startS);
  const halfS = Math.max(durationS, (starts[starts.length - 1] - starts[0]) / 2);
  const centreS = (starts[0] + starts[starts.length - 1]) / 2;
  const scales: JointScales = {
    riseM: riseAt(rhythm, centreS),
    riseSpread: Math.max(settings.jointLeastRiseSpread, Math.min(settings.jointMostRiseSpread, rhythm.riseSpread)),
    durationS,
    places: starts.map((startS) => (startS - centreS) / halfS),
  };
  const shape = {
    ends: settings.moveEnds,
    tilt: settings.moveTilt,
    fallTilt: settings.moveTilt,
    middle: settings.moveMiddle,
  };
  const rateHz = settings.modelRateHz;
  const cells: Cells = { startS: signal.startS, rateHz, coefficients: rhythm.noiseCoefficients, present };
  const fit = jointFit({ ...begin, shape }, samples, rhythm.noiseVariance, cells, scales, settings);
  if (fit === undefined) return { repetitions, rises };
  let next = 0;
  const refined = repetitions.map((one, index) => {
    if (!taken[index]) return { one, rise: rises[index] };
    const at = EACH * next;
    const { startS, logRise, holdS, logFall, topM } = fit.state.repetitions[next++];
    const [riseS, fallS] = [Math.exp(logRise), Math.exp(logFall)];
    // two moves that overlap have their top where the sum of both is highest: midway
    const topS = startS + riseS + holdS / 2;
    // what left its place or its kind was not fitted but lost
    if (Math.abs(topS - one.topS) > durationS / 2 || -holdS > Math.min(riseS, fallS) || topM <= 0)
      return { one, rise: rises[index] };
    const spread = (factors: readonly number[], overPathsS: number): number =>
      Math.sqrt(
        fit.factor.varianceOf([at, at + 1, at + 2, at + 3], factors) + (settings.jointPathTimes * overPathsS) ** 2,
      );
    const times = {
      startS,
      highFromS: topS - Math.max(0, holdS / 2),
      topS,
      highToS: topS + Math.max(0, holdS / 2),
      endS: topS + holdS / 2 + fallS,
      startSpreadS: spread([1, 0, 0, 0], one.startSpreadS),
      topSpreadS: spread([1, riseS, 0.5, 0], one.topSpreadS),
      endSpreadS: spread([1, riseS, 1, fallS], one.endSpreadS),
    };
    const uncertaintyM = Math.sqrt(
      fit.factor.varianceOf([at + 4], [1]) + (settings.jointPathRises * one.ownSpreadM) ** 2,
    );
    return { one: { ...one, ...times }, rise: { riseM: topM, uncertaintyM } };
  });
  return { repetitions: refined.map(({ one }) => one), rises: refined.map(({ rise }) => rise) };
}
