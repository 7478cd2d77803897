import { median } from '../../signal/order-statistics.ts';
import type { FloorVote } from './floor.ts';
import { greatestTopsLikelihood, type LevelStep, type Moment, type TopRule, topsLikelihood } from './top-line.ts';

/** When the level at rest has stepped. */
export interface StepRule {
  /** rests on either side of a possible step: at most, and at least [-] */
  readonly sideMost: number;
  readonly sideLeast: number;
  /** returns that stay high, as a share of all, and how high they stay at most [-, m] */
  readonly raisedShare: number;
  readonly raisedMostM: number;
  /** rests that are nothing of the kind, as a share of all, and the levels they may have [-, m] */
  readonly strayShare: number;
  readonly strayReachM: number;
  /** scatters of rests at the floor that are tried; the second is the usual one [m] */
  readonly scattersM: readonly [number, number, ...number[]];
  /** a step must make the recording so many times likelier, as a logarithm [-] */
  readonly leastGain: number;
  /** smaller steps are left to the slow line [m] */
  readonly leastStepM: number;
  /** so many steps of one set are looked for [-] */
  readonly stepsMost: number;
  /** tops on either side by which the size of a step is guessed [-] */
  readonly topsNear: number;
  readonly tops: TopRule;
}

/**
 * Lasting steps of the level at rest.
 *
 * Each rest is down at the floor, or stays somewhat above it (an incomplete return), or is a stray. With a step the rests
 * around it have two floors instead of one, and the tops beside them step by as much. The step is taken when that makes
 * both far likelier. Returns that stay high now and then scatter and explain no step; a floor that has moved gathers all.
 *
 * @param votes - evidence of the floor in time order [s, m]
 * @param tops - the greatest level of each repetition, in time order [s, m]
 * @param leastScatterM - scatter of rests at the floor that is never undercut [m]
 * @param rule - see {@link StepRule} [m, -]
 * @returns steps in time order; each lies between two rests or tops [s, m]
 *
 * Source: ours (likelihood ratio of a mixture, greatest over place and size of the step)
 */
export function floorSteps(
  votes: readonly FloorVote[],
  tops: readonly Moment[],
  leastScatterM: number,
  rule: StepRule,
): LevelStep[] {
  let [rests, highs] = [restsOf(votes), [...tops]];
  const scatters = rule.scattersM.map((scatter) => Math.max(scatter, leastScatterM));
  const steps: LevelStep[] = [];
  while (steps.length < rule.stepsMost) {
    const step = likeliestStep(rests, highs, scatters, rule);
    if (step === undefined) break;
    steps.push(step);
    [rests, highs] = [without(step, rests), without(step, highs)];
  }
  return steps.sort((a, b) => a.timeS - b.timeS);
}

/** Pieces of one rest share its fate: a long rest with the heel up is one return that stayed high and not many. */
function restsOf(votes: readonly FloorVote[]): Moment[] {
  return [...new Set(votes.map((vote) => vote.rest))].map((rest) => {
    const pieces = votes.filter((vote) => vote.rest === rest);
    return { timeS: median(pieces.map(({ timeS }) => timeS)), level: median(pieces.map(({ level }) => level)) };
  });
}

function without({ timeS, stepM }: LevelStep, moments: readonly Moment[]): Moment[] {
  return moments.map((one) => (one.timeS > timeS ? { ...one, level: one.level - stepM } : one));
}

function likeliestStep(
  rests: readonly Moment[],
  tops: readonly Moment[],
  scatters: readonly number[],
  rule: StepRule,
): LevelStep | undefined {
  const { sideLeast, leastGain } = rule;
  let best: (LevelStep & { gain: number }) | undefined;
  const timesS = [...rests, ...tops].map(({ timeS }) => timeS).sort((a, b) => a - b);
  // several instants have the same rests, or the same tops, on either side
  const floorsApart = once<number>();
  const stills = once<number[]>();
  const straights = once<number>();
  for (let i = 1; i < timesS.length; i++) {
    const timeS = (timesS[i - 1] + timesS[i]) / 2;
    const [lowBefore, lowAfter] = sides(rests, timeS, rule);
    if (lowBefore.length < sideLeast || lowAfter.length < sideLeast) continue;
    const [{ timeS: restS }] = lowAfter;
    const apart = floorsApart(restS, () => {
      const [before, after] = [lowBefore, lowAfter].map((lows) => likeliestFloor(levels(lows), scatters[0], rule));
      return after.level - before.level;
    });
    const [highBefore, highAfter] = sides(tops, timeS, rule);
    const sizes = likelySizes(apart, highBefore, highAfter, rule);
    if (sizes.length === 0) continue;
    const highs = [...highBefore, ...highAfter];
    const still = stills(restS, () => likelihoods(lowBefore, lowAfter, 0, scatters, rule));
    const straight = straights(highAfter[0]?.timeS ?? Number.POSITIVE_INFINITY, () =>
      topsLikelihood(highs, undefined, rule.tops),
    );
    const topsGainMost = greatestTopsLikelihood(highs.length, rule.tops) - straight;
    for (const stepM of sizes) {
      const step = { timeS, stepM };
      // the usual scatter alone shows whether there is anything to weigh
      const [usual] = likelihoods(lowBefore, lowAfter, stepM, [scatters[1]], rule);
      if (usual - still[1] + topsGainMost < 0) continue;
      const topsGain = topsLikelihood(highs, step, rule.tops) - straight;
      if (usual - still[1] + topsGain < 0) continue;
      const stepped = likelihoods(lowBefore, lowAfter, stepM, scatters, rule);
      const gain = Math.max(...stepped) - Math.max(...still) + topsGain;
      if (gain > (best?.gain ?? leastGain)) best = { ...step, gain };
    }
  }
  return best;
}

/** Keeps what was worked out for the last instant that was asked for. */
function once<Value>(): (atS: number, make: () => Value) => Value {
  let last: { readonly atS: number; readonly value: Value } | undefined;
  return (atS, make) => {
    if (last?.atS !== atS) last = { atS, value: make() };
    return last.value;
  };
}

/** The moments next before and next after an instant. */
function sides(moments: readonly Moment[], timeS: number, { sideMost }: StepRule): [before: Moment[], after: Moment[]] {
  const after = moments.findIndex((one) => one.timeS > timeS);
  const at = after < 0 ? moments.length : after;
  return [moments.slice(Math.max(0, at - sideMost), at), moments.slice(at, at + sideMost)];
}

/** Steps that the rests and the tops would have by themselves [m]. */
function likelySizes(
  ofRests: number,
  highBefore: readonly Moment[],
  highAfter: readonly Moment[],
  rule: StepRule,
): number[] {
  const sizes = [ofRests];
  if (highBefore.length > 1 && highAfter.length > 1) {
    const near = Math.min(rule.topsNear, highBefore.length, highAfter.length);
    sizes.push(median(levels(highAfter.slice(0, near))) - median(levels(highBefore.slice(-near))));
  }
  return sizes.filter((size) => Math.abs(size) > rule.leastStepM);
}

function levels(moments: readonly Moment[]): Float64Array {
  const all = new Float64Array(moments.length);
  for (let i = 0; i < all.length; i++) all[i] = moments[i].level;
  return all;
}

/** Log likelihood of rests with a step of the floor between them, greatest over the floor, for each scatter. */
function likelihoods(
  before: readonly Moment[],
  after: readonly Moment[],
  stepM: number,
  scatters: readonly number[],
  rule: StepRule,
): number[] {
  const all = levels([...before, ...after]);
  for (let i = before.length; i < all.length; i++) all[i] -= stepM;
  return scatters.map((scatter) => likeliestFloor(all, scatter, rule).logLikelihood);
}

/** The floor that makes levels likeliest, among the levels themselves, moved to the mean of those that gather there [m]. */
function likeliestFloor(
  all: Float64Array,
  scatter: number,
  rule: StepRule,
): { readonly level: number; readonly logLikelihood: number } {
  let best = { level: all[0], logLikelihood: Number.NEGATIVE_INFINITY };
  // levels that gather lead to one and the same mean
  const tried = new Float64Array(all.length).fill(Number.NaN);
  for (let i = 0; i < all.length; i++) {
    const level = meanNear(all, all[i], 2 * scatter);
    if (tried.includes(level)) continue;
    tried[i] = level;
    const found = logLikelihood(all, level, scatter, rule);
    if (found > best.logLikelihood) best = { level, logLikelihood: found };
  }
  return best;
}

function meanNear(all: Float64Array, centre: number, reach: number): number {
  let sum = 0;
  let count = 0;
  for (let i = 0; i < all.length; i++) {
    const level = all[i];
    if (!(Math.abs(level - centre) < reach)) continue;
    sum += level;
    count += 1;
  }
  return sum / count;
}

/** Log likelihood of rests about a floor; each has a density of being down, raised, or a stray [log 1/m]. */
function logLikelihood(all: Float64Array, floor: number, scatter: number, rule: StepRule): number {
  const { raisedShare, raisedMostM, strayShare, strayReachM } = rule;
  const downShare = 1 - raisedShare - strayShare;
  const greatest = Math.sqrt(2 * Math.PI) * scatter;
  let sum = 0;
  for (let i = 0; i < all.length; i++) {
    const aboveM = all[i] - floor;
    const down = Math.exp(-0.5 * (aboveM / scatter) ** 2) / greatest;
    const raised = aboveM > 0 && aboveM < raisedMostM ? 1 / raisedMostM : 0;
    const stray = Math.abs(aboveM) < strayReachM ? 1 / (2 * strayReachM) : 1e-3;
    sum += Math.log(downShare * down + raisedShare * raised + strayShare * stray);
  }
  return sum;
}
