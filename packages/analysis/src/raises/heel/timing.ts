import { type Bump, joinBumps } from './bumps.ts';
import type { Candidate } from './candidate.ts';
import { type FitData, fitMove, type MoveFit } from './move-fit.ts';
import type { Move } from './move-model.ts';
import type { MoveShape } from './move-shape.ts';
import type { PartsPrior } from './parts-prior.ts';
import { type SwayNoise, whitening } from './sway-noise.ts';

/** The level as the fits see it. */
export interface FitSignal {
  readonly startS: number;
  readonly sampleRateHz: number;
  /** lightly filtered level [m] */
  readonly levelM: Float64Array;
  /** 1 where samples were recorded, 0 inside gaps */
  readonly known: Float64Array;
  /** low-passed level in which bumps were found [m] */
  readonly smoothM: Float64Array;
  /** every turn of it, also those that were joined */
  readonly turns: readonly Bump[];
  /** how the level departs from a smooth move */
  readonly noise: SwayNoise;
}

/** The stretch of one repetition: its outer lows, and the highs that stand out of it. */
export interface Stretch {
  readonly leftIndex: number;
  readonly rightIndex: number;
  /** one, or more when the top has dips; in time order */
  readonly highs: readonly Bump[];
  readonly guess: Move;
}

/** From 10 to 90 % takes about this share of a smooth move: 0.51 for minimum jerk, 0.59 for a half cosine. */
const wholeShare = 0.55;

/** Share of the height that a dip at the top must have to part two highs. */
const leastDip = 0.08;

/**
 * Stretch and first guess of one repetition.
 *
 * @param candidate - the bump with its crossings [SI]
 * @param signal - level and turns [m]
 * @returns stretch, by index, and guess [index, s, m]
 *
 * Source: ours
 */
export function stretchOf(candidate: Candidate, signal: FitSignal): Stretch {
  const { bump, halfUpIndex, halfDownIndex } = candidate;
  let leftIndex = bump.leftIndex;
  let rightIndex = bump.rightIndex;
  const inside: Bump[] = [];
  for (const turn of turnsWithin(signal.turns, bump)) {
    inside.push(turn);
    // A bounce at the bottom is not part of the move: the move begins at the last low before it, ends at the first after.
    if (turn.leftIndex < halfUpIndex && turn.left < bump.left + 0.35 * (bump.top - bump.left)) {
      leftIndex = Math.max(leftIndex, turn.leftIndex);
    }
    if (turn.rightIndex > halfDownIndex && turn.right < bump.right + 0.35 * (bump.top - bump.right)) {
      rightIndex = Math.min(rightIndex, turn.rightIndex);
    }
  }
  const dip = Math.max(leastDip * candidate.heightM, 3 * signal.noise.swaySdM);
  const highs = joinBumps(inside, () => dip).filter(
    (one) => one.topIndex >= halfUpIndex - 1 && one.topIndex <= halfDownIndex + 1,
  );
  const timeOf = (index: number): number => signal.startS + index / signal.sampleRateHz;
  const upS = candidate.upS / wholeShare;
  const downS = candidate.downS / wholeShare;
  const guess = {
    startS: timeOf(halfUpIndex) - upS / 2,
    highFromS: Math.min(timeOf(halfUpIndex) + upS / 2, timeOf(halfDownIndex)),
    highToS: Math.max(timeOf(halfDownIndex) - downS / 2, timeOf(halfUpIndex)),
    endS: timeOf(halfDownIndex) + downS / 2,
    before: bump.left,
    top: bump.top,
    after: bump.right,
  };
  return { leftIndex, rightIndex, highs: highs.length > 0 ? highs : [bump], guess };
}

/**
 * When the move of a bump begins, roughly.
 *
 * @param candidate - the bump; undefined when there is none [SI]
 * @param signal - gives the clock [s]
 * @returns the instant; infinity when there is none [s]
 *
 * Source: ours
 */
export function moveStartS(candidate: Candidate | undefined, signal: FitSignal): number {
  if (candidate === undefined) return Number.POSITIVE_INFINITY;
  return signal.startS + candidate.halfUpIndex / signal.sampleRateHz - candidate.upS / wholeShare / 2;
}

/**
 * When the move of a bump ends, roughly.
 *
 * @param candidate - the bump; undefined when there is none [SI]
 * @param signal - gives the clock [s]
 * @returns the instant; minus infinity when there is none [s]
 *
 * Source: ours
 */
export function moveEndS(candidate: Candidate | undefined, signal: FitSignal): number {
  if (candidate === undefined) return Number.NEGATIVE_INFINITY;
  return signal.startS + candidate.halfDownIndex / signal.sampleRateHz + candidate.downS / wholeShare / 2;
}

/** The turns of the signal that lie within a bump; they are in time order, so two binary searches find them. */
function turnsWithin(turns: readonly Bump[], bump: Bump): readonly Bump[] {
  let from = 0;
  let to = turns.length;
  while (from < to) {
    const middle = (from + to) >> 1;
    if (turns[middle].topIndex < bump.leftIndex) from = middle + 1;
    else to = middle;
  }
  let end = from;
  while (end < turns.length && turns[end].topIndex <= bump.rightIndex) end++;
  return turns.slice(from, end);
}

/**
 * Samples of a stretch for one fit: means of as many neighbours as leave some 60 samples.
 *
 * @param signal - level [m]
 * @param fromS - start of the stretch [s]
 * @param toS - end of the stretch [s]
 * @returns times, levels and their whitening [s, m]
 *
 * Source: ours
 */
export function samplesOf(signal: FitSignal, fromS: number, toS: number): FitData {
  const { startS, sampleRateHz, levelM, known, noise } = signal;
  const from = Math.max(0, Math.ceil((fromS - startS) * sampleRateHz - 1e-6));
  const to = Math.min(levelM.length - 1, Math.floor((toS - startS) * sampleRateHz + 1e-6));
  const thin = Math.max(1, Math.floor((to - from + 1) / 60));
  const count = Math.max(0, Math.floor((to - from + 1) / thin));
  const timesS = new Float64Array(count);
  const level = new Float64Array(count);
  const seen = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const first = from + i * thin;
    let sum = 0;
    seen[i] = 1;
    for (let k = first; k < first + thin; k++) {
      sum += levelM[k];
      if (known[k] === 0) seen[i] = 0;
    }
    level[i] = sum / thin;
    timesS[i] = startS + (first + (thin - 1) / 2) / sampleRateHz;
  }
  const ofMean = { ...noise, whiteSdM: noise.whiteSdM / Math.sqrt(thin) };
  return { timesS, level, whitening: whitening(ofMean, thin / sampleRateHz, seen) };
}

/**
 * How far the stretch of a fit reaches: to the neighbours, but beyond either end by no more than half of the way there,
 * or a quarter of a second where that is longer.
 *
 * @param stretch - bottoms around the move, and the move as guessed [index, s]
 * @param previousEndS - end of the move before; -Infinity where there is none [s]
 * @param nextStartS - start of the move after; Infinity where there is none [s]
 * @param signal - the level, for its clock [s, Hz]
 * @returns first and last instant [s]
 *
 * Source: ours
 */
export function reachOf(
  stretch: Stretch,
  previousEndS: number,
  nextStartS: number,
  signal: FitSignal,
): [number, number] {
  const { guess } = stretch;
  const timeOf = (index: number): number => signal.startS + index / signal.sampleRateHz;
  const upS = guess.highFromS - guess.startS;
  const downS = guess.endS - guess.highToS;
  const left = Math.max(Math.min(previousEndS, timeOf(stretch.leftIndex)), guess.startS - Math.max(0.25, 0.5 * upS));
  const right = Math.min(Math.max(nextStartS, timeOf(stretch.rightIndex)), guess.endS + Math.max(0.25, 0.5 * downS));
  return [left, right];
}

/** How the person of the set moves: shapes of the way up and down; how long the parts usually last, where known. */
export interface Manner {
  readonly up: MoveShape;
  readonly down: MoveShape;
  readonly parts: PartsPrior | undefined;
}

export interface Timed {
  readonly startS: number;
  readonly startU: number;
  readonly topS: number;
  readonly topU: number;
  readonly endS: number;
  readonly endU: number;
  readonly highFromS: number;
  readonly highToS: number;
  readonly topM: number;
  readonly topUM: number;
  readonly beforeM: number;
  readonly afterM: number;
  readonly residualSdM: number;
  /** the fit of the main high, undefined where none settled */
  readonly fit: MoveFit | undefined;
}

/**
 * Times and levels of one repetition. With a dip at the top the highest high gives the top, the first the start and the
 * last the end.
 *
 * @param stretch - from {@link stretchOf} [index, s, m]
 * @param reachS - from where to where the rest on either side is used [s]
 * @param signal - level [m]
 * @param manner - shapes and usual parts, see {@link Manner} [-, s]
 * @returns times and levels with uncertainties [s, m]
 *
 * Source: ours
 */
export function timeRepetition(
  stretch: Stretch,
  reachS: readonly [number, number],
  signal: FitSignal,
  manner: Manner,
): Timed {
  const { guess, highs } = stretch;
  const timeOf = (index: number): number => signal.startS + index / signal.sampleRateHz;
  const whole = highs.length === 1;
  const fitOf = (fromS: number, toS: number, from: Move): MoveFit | undefined => {
    const fit = fitMove(
      { ...samplesOf(signal, fromS, toS), parts: whole ? manner.parts : undefined },
      from,
      manner.up,
      manner.down,
    );
    // A fit that ran off to somewhere else is none.
    const usable = fit !== undefined && fit.startS > fromS - (toS - fromS) / 2 && fit.endS < toS + (toS - fromS) / 2;
    return usable && fit.highFromS < toS && fit.highToS > fromS ? fit : undefined;
  };
  const first = highs[0];
  const last = highs.at(-1)!;
  const main = highs.reduce((a, b) => (b.top > a.top ? b : a));
  if (whole) return timed(fitOf(reachS[0], reachS[1], guess), undefined, undefined, guess, signal);
  const part = (high: Bump): MoveFit | undefined => {
    const fromS = high === first ? reachS[0] : timeOf(high.leftIndex);
    const toS = high === last ? reachS[1] : timeOf(high.rightIndex);
    const topS = timeOf(high.topIndex);
    return fitOf(fromS, toS, {
      startS: high === first ? guess.startS : fromS,
      highFromS: high === first ? Math.min(guess.highFromS, topS) : (fromS + 2 * topS) / 3,
      highToS: high === last ? Math.max(guess.highToS, topS) : (toS + 2 * topS) / 3,
      endS: high === last ? guess.endS : toS,
      before: high.left,
      top: high.top,
      after: high.right,
    });
  };
  return timed(part(main), part(first), part(last), guess, signal);
}

/**
 * The family of shapes is not the person: what it leaves of the start and end, in shares of the way up or down, and of
 * the top, in shares of both ways; and the noise of a single fit is a little greater than its curvature says. Set by
 * coverage on simulated sets.
 */
const [edgeShare, topShare, edgeLeastS, fitShare] = [0.03, 0.003, 0.008, 1.05];

function timed(
  main: MoveFit | undefined,
  first: MoveFit | undefined,
  last: MoveFit | undefined,
  guess: Move,
  signal: FitSignal,
): Timed {
  const begin = first ?? main;
  const finish = last ?? main;
  const wideS = 0.25 * (guess.endS - guess.startS);
  const top: Move = main ?? guess;
  const [upS, downS] = [top.highFromS - top.startS, top.endS - top.highToS];
  const edgeU = (fitU: number, wayS: number): number => Math.hypot(fitShare * fitU, edgeShare * wayS, edgeLeastS);
  return {
    startS: (begin ?? guess).startS,
    startU: edgeU(begin?.startU ?? wideS, upS),
    topS: (top.highFromS + top.highToS) / 2,
    topU: Math.hypot(fitShare * (main?.topU ?? wideS), topShare * (upS + downS)),
    endS: (finish ?? guess).endS,
    endU: edgeU(finish?.endU ?? wideS, downS),
    highFromS: (begin ?? guess).highFromS,
    highToS: (finish ?? guess).highToS,
    topM: top.top,
    topUM: main?.levelU ?? 2 * signal.noise.swaySdM,
    beforeM: (begin ?? guess).before,
    afterM: (finish ?? guess).after,
    residualSdM: main?.residualSd ?? signal.noise.swaySdM,
    fit: main,
  };
}
