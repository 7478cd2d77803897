import { riseBetweenRests } from '../../movement/body-rise.ts';
import { mean } from '../../signal/moments.ts';
import type { Agreed } from './consensus.ts';
import { type Rhythm, riseAt } from './rhythm.ts';
import { lowDensity, type RiseSignal } from './rise-estimates.ts';
import type { BodySettings } from './settings.ts';

/** Phases of a repetition at which the set's mean way is known: from start at 0 to end at 1, and a little beyond. */
const FROM = -0.15;
const STEP = 0.01;
const STEPS = 131;

/** Time share of a minimum-jerk move at which a share of its way is done: inverse of 10 s^3 - 15 s^4 + 6 s^5. */
function timeShareOf(wayShare: number): number {
  let low = 0;
  let high = 1;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (middle ** 3 * (10 + middle * (6 * middle - 15)) < wayShare) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Phase at which the way falls below a level, going from an index in a direction. */
function crossing(way: Float64Array, from: number, direction: 1 | -1, level: number): number | undefined {
  for (let i = from; i + direction >= 0 && i + direction < way.length; i += direction) {
    const [here, next] = [way[i], way[i + direction]];
    if (here >= level && next < level) return FROM + (i + (direction * (here - level)) / (here - next)) * STEP;
  }
  return undefined;
}

interface Landmarks {
  readonly start: number;
  readonly highFrom: number;
  readonly highTo: number;
  readonly end: number;
}

/** Ends of the moves from where the way leaves its bottom and its top, and what a minimum-jerk move needs beyond. */
function landmarksOf(way: Float64Array, edge: number): Landmarks | undefined {
  const inner = way.subarray(Math.round((0.25 - FROM) / STEP), Math.round((0.75 - FROM) / STEP));
  const height = Math.max(...inner);
  const top = way.indexOf(height, Math.round((0.25 - FROM) / STEP));
  const at = (direction: 1 | -1, share: number): number | undefined => crossing(way, top, direction, share * height);
  const [low1, high1] = [at(-1, edge), at(-1, 1 - edge)];
  const [high2, low2] = [at(1, 1 - edge), at(1, edge)];
  if (low1 === undefined || high1 === undefined || high2 === undefined || low2 === undefined) return undefined;
  const beyond = timeShareOf(edge);
  const rise = (high1 - low1) / (1 - 2 * beyond);
  const fall = (low2 - high2) / (1 - 2 * beyond);
  const [highFrom, highTo] = [high1 + beyond * rise, high2 - beyond * fall];
  const middle = (highFrom + highTo) / 2;
  return {
    start: low1 - beyond * rise,
    highFrom: Math.min(highFrom, middle),
    highTo: Math.max(highTo, middle),
    end: low2 + beyond * fall,
  };
}

/**
 * Repetitions with the times of their parts corrected by what the set has in common.
 *
 * Templates are smoother and more even than people. The way of each repetition, integrated from rest to rest, is averaged
 * over the set at equal phases; where that mean way leaves bottom and top tells how far the templates are off, for all
 * alike. The correction counts as much as its noise allows.
 *
 * @param repetitions - agreed by the paths, in time order [s, m]
 * @param signal - acceleration on a regular grid [m/s2]
 * @param rhythm - level and noise of the set [m, m2/s4]
 * @param settings - how far shapes differ [-]
 * @returns the same repetitions, their times moved [s]
 *
 * Source: ours
 */
export function sharedTiming(
  repetitions: readonly Agreed[],
  signal: RiseSignal,
  rhythm: Rhythm,
  settings: BodySettings,
): Agreed[] {
  const sums = new Float64Array(STEPS);
  const used: Agreed[] = [];
  let variance = 0;
  let riseSum = 0;
  repetitions.forEach((one, index) => {
    const level = riseAt(rhythm, one.topS);
    const usual = one.ownRiseM > 0.6 * level && one.ownRiseM < 1.7 * level;
    if (one.share < 0.8 || one.gapShare > 0.25 || !usual || one.dipShare > 0.3) return;
    const durationS = one.endS - one.startS;
    const before = repetitions[index - 1]?.endS ?? -Infinity;
    const after = repetitions[index + 1]?.startS ?? Infinity;
    const fromS = Math.max(one.startS - 0.13 * durationS, Math.min(one.startS, (before + one.startS) / 2));
    const toS = Math.min(one.endS + 0.13 * durationS, Math.max(one.endS, (after + one.endS) / 2));
    const first = Math.max(0, Math.round((fromS - signal.startS) * signal.sampleRateHz));
    const last = Math.min(signal.upward.length, Math.round((toS - signal.startS) * signal.sampleRateHz) + 1);
    if (last - first < 8) return;
    const way = riseBetweenRests(signal.upward.subarray(first, last), signal.sampleRateHz);
    for (let bin = 0; bin < STEPS; bin++) {
      const timeS = one.startS + (FROM + bin * STEP) * durationS;
      const at = (timeS - signal.startS) * signal.sampleRateHz - first;
      const i = Math.floor(at);
      if (i >= 0 && i + 1 < way.length) sums[bin] += way[i] + (at - i) * (way[i + 1] - way[i]);
    }
    used.push(one);
    variance += (lowDensity(rhythm, settings) * (toS - fromS) ** 3) / 192;
    riseSum += level;
  });
  if (used.length === 0) return [...repetitions];
  const noise = Math.sqrt(variance) / riseSum;
  const edge = Math.max(0.025, Math.min(0.1, 1.5 * noise));
  const found = landmarksOf(sums, edge);
  if (found === undefined) return [...repetitions];
  const phase = (get: (one: Agreed) => number): number =>
    mean(used.map((one) => (get(one) - one.startS) / (one.endS - one.startS)));
  // a way that is off by the noise moves a crossing by the noise over the slope there: about half a move's duration
  const spread = settings.shapeTimeSpread;
  const gain = spread ** 2 / (spread ** 2 + (0.25 * noise) ** 2);
  const shiftOf = (landmark: number, now: number): number => gain * Math.max(-0.2, Math.min(0.2, landmark - now));
  const start = shiftOf(found.start, 0);
  const end = shiftOf(found.end, 1);
  const highFrom = shiftOf(
    found.highFrom,
    phase((one) => one.highFromS),
  );
  const highTo = shiftOf(
    found.highTo,
    phase((one) => one.highToS),
  );
  return repetitions.map((one) => {
    const durationS = one.endS - one.startS;
    const middle = ((highFrom + highTo) / 2) * durationS;
    const highFromS = one.highFromS + highFrom * durationS;
    return {
      ...one,
      startS: Math.min(one.startS + start * durationS, highFromS - 0.02),
      topS: one.topS + middle,
      highFromS: Math.min(highFromS, one.topS + middle),
      highToS: Math.max(one.highToS + highTo * durationS, one.topS + middle),
      endS: Math.max(one.endS + end * durationS, one.topS + middle + 0.02),
    };
  });
}
