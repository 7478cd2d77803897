import type { Interval } from '../../signal/intervals.ts';
import { median, medianAbsoluteDeviation } from '../../signal/order-statistics.ts';
import type { FloorVote } from './floor.ts';

/** Level at rest as it goes through the set. */
export interface FloorLine {
  /** level at rest at an instant [m] */
  readonly at: (timeS: number) => number;
  /** standard uncertainty of that level [m] */
  readonly uncertainty: (timeS: number) => number;
  /** spread of single pieces of evidence about the line [m] */
  readonly scatterM: number;
}

/** Reach of the local line: several repetitions, so that one high bottom counts little [s]. */
const reachS = 20;

/** Slope that a sensor at rest may have: 3 mm a minute [m/s]. */
const usualSlope = 0.003 / 60;

/**
 * Evidence for the level at rest from the time between repetitions: the middle of each half second of it.
 *
 * @param smooth - low-passed level [m]
 * @param startS - time of the first sample [s]
 * @param sampleRateHz - samples per second [Hz]
 * @param rests - stretches between repetitions and beside the set [s]
 * @returns votes in time order, weighing as their length [s, m]
 *
 * Source: ours
 */
export function restVotes(
  smooth: Float64Array,
  startS: number,
  sampleRateHz: number,
  rests: readonly Interval[],
): FloorVote[] {
  const votes: FloorVote[] = [];
  const piece = Math.round(0.5 * sampleRateHz);
  for (const { fromS, toS } of rests) {
    const from = Math.max(0, Math.ceil((fromS - startS) * sampleRateHz));
    const to = Math.min(smooth.length, Math.floor((toS - startS) * sampleRateHz) + 1);
    const pieces = Math.max(1, Math.round((to - from) / piece));
    for (let k = 0; k < pieces; k++) {
      const begin = from + Math.round(((to - from) * k) / pieces);
      const end = from + Math.round(((to - from) * (k + 1)) / pieces);
      if (end <= begin) continue;
      votes.push({
        timeS: startS + (begin + end - 1) / 2 / sampleRateHz,
        level: median(smooth.subarray(begin, end)),
        weight: 0.3 + (end - begin) / piece,
      });
    }
  }
  return votes;
}

/**
 * A slow robust line through the evidence for the level at rest. A bottom that stays high (an incomplete return)
 * counts the less the higher it is; one below the line counts in full up to the usual scatter.
 *
 * @param votes - evidence in time order [s, m]
 * @param restM - level at rest of the recording as a whole [m]
 * @param leastScatterM - spread of the evidence that is never undercut [m]
 * @returns the line [m]
 *
 * Source: Cleveland (1979), J Am Stat Assoc 74:829-836 (robust locally weighted regression), weights one-sided: ours
 */
export function floorLine(votes: readonly FloorVote[], restM: number, leastScatterM: number): FloorLine {
  if (votes.length === 0) return { at: () => restM, uncertainty: () => leastScatterM, scatterM: leastScatterM };
  let trust = votes.map((vote) => robustWeight(vote.level - restM, 2 * leastScatterM));
  let scatterM = leastScatterM;
  for (let round = 0; round < 4; round++) {
    const held = trust;
    const residuals = votes.map((vote) => vote.level - localLine(votes, held, restM, vote.timeS).level);
    const near = residuals.filter((_, i) => held[i] > 0.3);
    scatterM = Math.max(leastScatterM, near.length > 3 ? medianAbsoluteDeviation(near) : leastScatterM);
    trust = residuals.map((residual) => robustWeight(residual, scatterM));
  }
  const settled = trust;
  return {
    at: (timeS) => localLine(votes, settled, restM, timeS).level,
    uncertainty: (timeS) => scatterM / Math.sqrt(Math.max(1, localLine(votes, settled, restM, timeS).support)),
    scatterM,
  };
}

function robustWeight(residual: number, scatter: number): number {
  const x = residual / (residual > 0 ? 2 * scatter : 3 * scatter);
  return 1 / (1 + x * x * x * x);
}

function localLine(
  votes: readonly FloorVote[],
  trust: readonly number[],
  restM: number,
  timeS: number,
): { level: number; support: number } {
  let total = 0;
  let squares = 0;
  let timeMean = 0;
  let mean = 0;
  for (let i = 0; i < votes.length; i++) {
    const away = (votes[i].timeS - timeS) / reachS;
    if (away > 4 || away < -4) continue;
    const weight = votes[i].weight * trust[i] * Math.exp(-0.5 * away * away);
    total += weight;
    squares += weight * weight;
    timeMean += weight * (votes[i].timeS - timeS);
    mean += weight * votes[i].level;
  }
  if (!(total > 1e-9)) return { level: restM, support: 1 };
  timeMean /= total;
  mean /= total;
  let xx = 0;
  let xy = 0;
  for (let i = 0; i < votes.length; i++) {
    const away = (votes[i].timeS - timeS) / reachS;
    if (away > 4 || away < -4) continue;
    const weight = votes[i].weight * trust[i] * Math.exp(-0.5 * away * away);
    const x = votes[i].timeS - timeS - timeMean;
    xx += weight * x * x;
    xy += weight * x * (votes[i].level - mean);
  }
  // Ridge: a slope far above what a sensor at rest has must be well supported.
  const slope = xy / (xx + (0.002 / usualSlope) ** 2);
  return { level: mean - slope * timeMean, support: (total * total) / squares };
}
