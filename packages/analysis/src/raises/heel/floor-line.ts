import type { Interval } from '../../signal/intervals.ts';
import { median, medianAbsoluteDeviation, quantile } from '../../signal/order-statistics.ts';
import type { FloorVote } from './floor.ts';
import { floorSteps, type StepRule } from './floor-steps.ts';
import type { LevelStep, Moment } from './top-line.ts';

/** Level at rest as it goes through the set. */
export interface FloorLine {
  /** level at rest at an instant [m] */
  readonly at: (timeS: number) => number;
  /** standard uncertainty of that level [m] */
  readonly uncertainty: (timeS: number) => number;
  /** spread of single pieces of evidence about the line [m] */
  readonly scatterM: number;
  /** steps of the level at rest: the sensor was moved [s, m] */
  readonly steps: readonly LevelStep[];
}

/** How the level at rest is followed through a set. */
export interface FloorRule {
  /** length of one piece of evidence [s] */
  readonly pieceS: number;
  /** a long rest tells of one return, which may have stayed high: it counts as no more pieces than these [-] */
  readonly mostPieces: number;
  /** weight of a piece however short, beside its share of a whole one [-] */
  readonly leastWeight: number;
  /** reach of the local line: several repetitions, so that one high bottom counts little [s] */
  readonly reachS: number;
  /** slope that a sensor at rest may have [m/s], and the scatter that it is held against [m] */
  readonly usualSlopeMps: number;
  readonly slopeScatterM: number;
  /** pieces on either side of one by which it is first judged, and which hundredth of them counts as the floor [-] */
  readonly sideCount: number;
  readonly nearQuantile: number;
  /** so many scatters above or below the line a piece counts half [-] */
  readonly aboveScatters: number;
  readonly belowScatters: number;
  /** weight from which a piece counts for the scatter [-] */
  readonly heldFrom: number;
  readonly steps: StepRule;
}

/**
 * Evidence for the level at rest from the time between repetitions: the middle of each piece of it,
 * or of each of the few that a long rest counts as.
 *
 * @param smooth - low-passed level [m]
 * @param startS - time of the first sample [s]
 * @param sampleRateHz - samples per second [Hz]
 * @param rests - stretches between repetitions and beside the set [s]
 * @param rule - see {@link FloorRule} [s, -]
 * @returns votes in time order, weighing as their length [s, m]
 *
 * Source: ours
 */
export function restVotes(
  smooth: Float64Array,
  startS: number,
  sampleRateHz: number,
  rests: readonly Interval[],
  rule: FloorRule,
): FloorVote[] {
  const votes: FloorVote[] = [];
  const piece = Math.round(rule.pieceS * sampleRateHz);
  for (const [rest, { fromS, toS }] of rests.entries()) {
    const from = Math.max(0, Math.ceil((fromS - startS) * sampleRateHz));
    const to = Math.min(smooth.length, Math.floor((toS - startS) * sampleRateHz) + 1);
    const pieces = Math.min(rule.mostPieces, Math.max(1, Math.round((to - from) / piece)));
    for (let k = 0; k < pieces; k++) {
      const begin = from + Math.round(((to - from) * k) / pieces);
      const end = from + Math.round(((to - from) * (k + 1)) / pieces);
      if (end <= begin) continue;
      votes.push({
        timeS: startS + (begin + end - 1) / 2 / sampleRateHz,
        level: median(smooth.subarray(begin, end)),
        weight: rule.leastWeight + Math.min(1, (end - begin) / piece),
        rest,
      });
    }
  }
  return votes;
}

/**
 * A slow robust line through the evidence for the level at rest. A bottom that stays high (an incomplete return)
 * counts the less the higher it is; one below the line counts in full up to the usual scatter.
 *
 * @param given - evidence in time order [s, m]
 * @param restM - level at rest of the recording as a whole [m]
 * @param leastScatterM - spread of the evidence that is never undercut [m]
 * @param rule - see {@link FloorRule} [SI]
 * @param tops - greatest level of each repetition, in time order: they step with the floor [s, m]
 * @returns the line [m]
 *
 * Source: Cleveland (1979), J Am Stat Assoc 74:829-836 (robust locally weighted regression), weights one-sided: ours
 */
export function floorLine(
  given: readonly FloorVote[],
  restM: number,
  leastScatterM: number,
  rule: FloorRule,
  tops: readonly Moment[] = [],
): FloorLine {
  if (given.length === 0) {
    return { at: () => restM, uncertainty: () => leastScatterM, scatterM: leastScatterM, steps: [] };
  }
  const steps = floorSteps(given, tops, leastScatterM, rule.steps);
  const stepped = (timeS: number): number =>
    steps.reduce((sum, step) => (timeS >= step.timeS ? sum + step.stepM : sum), 0);
  const votes = given.map((vote) => ({ ...vote, level: vote.level - stepped(vote.timeS) }));
  const { sideCount, nearQuantile, heldFrom } = rule;
  let trust = votes.map((vote, i) => {
    const near = votes.slice(Math.max(0, i - sideCount), i + sideCount + 1).map((one) => one.level);
    return robustWeight(vote.level - quantile(near, nearQuantile), 2 * leastScatterM, rule);
  });
  let scatterM = leastScatterM;
  for (let round = 0; round < 4; round++) {
    const held = trust;
    const residuals = votes.map((vote) => vote.level - localLine(votes, held, restM, vote.timeS, rule).level);
    const near = residuals.filter((_, i) => held[i] > heldFrom);
    scatterM = Math.max(leastScatterM, near.length > 3 ? medianAbsoluteDeviation(near) : leastScatterM);
    trust = residuals.map((residual) => robustWeight(residual, scatterM, rule));
  }
  const settled = trust;
  return {
    at: (timeS) => localLine(votes, settled, restM, timeS, rule).level + stepped(timeS),
    uncertainty: (timeS) => scatterM / Math.sqrt(Math.max(1, localLine(votes, settled, restM, timeS, rule).support)),
    scatterM,
    steps,
  };
}

function robustWeight(residual: number, scatter: number, { aboveScatters, belowScatters }: FloorRule): number {
  const x = residual / (residual > 0 ? aboveScatters * scatter : belowScatters * scatter);
  return 1 / (1 + x * x * x * x);
}

function localLine(
  votes: readonly FloorVote[],
  trust: readonly number[],
  restM: number,
  timeS: number,
  { reachS, usualSlopeMps, slopeScatterM }: FloorRule,
): { level: number; support: number } {
  // sums of 1, x, y, xx and xy in one pass, with both counted from the middle of things
  let total = 0;
  let squares = 0;
  let x1 = 0;
  let y1 = 0;
  let x2 = 0;
  let xy1 = 0;
  for (let i = 0; i < votes.length; i++) {
    const { timeS: voteS, level, weight: length } = votes[i];
    const x = voteS - timeS;
    if (x > 4 * reachS || x < -4 * reachS) continue;
    const weight = length * trust[i] * Math.exp((-0.5 * x * x) / (reachS * reachS));
    const y = level - restM;
    total += weight;
    squares += weight * weight;
    x1 += weight * x;
    y1 += weight * y;
    x2 += weight * x * x;
    xy1 += weight * x * y;
  }
  if (!(total > 1e-9)) return { level: restM, support: 1 };
  const xMean = x1 / total;
  const yMean = y1 / total;
  // Ridge: a slope far above what a sensor at rest has must be well supported.
  const slope = (xy1 - xMean * y1) / (x2 - xMean * x1 + (slopeScatterM / usualSlopeMps) ** 2);
  return { level: restM + yMean - slope * xMean, support: (total * total) / squares };
}
