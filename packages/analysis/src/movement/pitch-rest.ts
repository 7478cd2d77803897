import { quantile } from '../signal/order-statistics.ts';
import { findStillRuns, type StillRun } from './still-runs.ts';

export interface RestRule {
  /** window in which the angle must hardly move [s] */
  readonly windowS: number;
  /** greatest range within it [rad] */
  readonly toleranceRad: number;
  /** rest of this length is as good as any longer one [s] */
  readonly enoughS: number;
}

export interface RestEvidence {
  /** angle at rest [rad] */
  readonly level: number;
  /** how far the movement goes to the positive side of rest: -1 only below, 1 only above, 0 no rest seen */
  readonly upward: number;
}

/** Returns in between that make the angle at both ends that of rest [-]; ours: a sensor that lies on a table has none. */
const LEAST_RETURNS = 2;

/** Times that a signal comes to a level between two samples. */
function returnsTo(level: number, angle: Float64Array, from: number, to: number, tolerance: number): number {
  let returns = 0;
  let away = false;
  for (let i = from; i < to; i++) {
    const near = Math.abs(angle[i] - level) <= tolerance;
    if (near && away) returns++;
    away = !near;
  }
  return returns;
}

/** The level at which a recording begins and ends in stillness, if it comes back to it in between. */
function levelOfBothEnds(runs: readonly StillRun[], angle: Float64Array, tolerance: number): number | undefined {
  const [first, last] = [runs[0], runs[runs.length - 1]];
  if (runs.length < 2 || Math.abs(first.level - last.level) > tolerance) return undefined;
  const level = (first.level + last.level) / 2;
  return returnsTo(level, angle, first.to, last.from, tolerance) < LEAST_RETURNS ? undefined : level;
}

/**
 * Angle at rest, and the side of it on which movement takes place.
 *
 * The angle at rest is the one at which the longest stillness is spent, each run weighing as the square of its length. Where tops
 * are held for seconds most stillness is spent there: a recording that begins and ends at one angle, and comes back to it in
 * between, rests at that one.
 *
 * @param angle - angle of the foot, low-passed [rad]
 * @param sampleRateHz - samples per second [Hz]
 * @param rule - what counts as rest [s, rad]
 * @returns level and side; without any rest the level of the lowest tenth and side 0 [rad, -]
 *
 * Source: ours
 */
export function restEvidence(angle: Float64Array, sampleRateHz: number, rule: RestRule): RestEvidence {
  const half = Math.max(1, Math.round((rule.windowS / 2) * sampleRateHz));
  const runs = findStillRuns(angle, half, rule.toleranceRad);
  if (runs.length === 0) return { level: quantile(angle, 0.1), upward: 0 };
  let level = 0;
  let most = -1;
  let stillS = 0;
  for (const run of runs) {
    let support = 0;
    let nearS = 0;
    for (const other of runs) {
      if (Math.abs(other.level - run.level) > rule.toleranceRad) continue;
      support += (other.to - other.from) ** 2;
      nearS = Math.max(nearS, (other.to - other.from) / sampleRateHz);
    }
    if (support <= most) continue;
    most = support;
    level = run.level;
    stillS = nearS;
  }
  const ends = levelOfBothEnds(runs, angle, rule.toleranceRad);
  if (ends !== undefined && Math.abs(ends - level) > rule.toleranceRad) {
    level = ends;
    stillS = Math.max(runs[0].to - runs[0].from, runs[runs.length - 1].to - runs[runs.length - 1].from) / sampleRateHz;
  }
  let above = 0;
  let below = 0;
  for (const value of angle) {
    const departure = Math.min(1, Math.max(-1, value - level)); // a step in the air must not outweigh the set
    if (departure > rule.toleranceRad) above += departure;
    else if (departure < -rule.toleranceRad) below -= departure;
  }
  const share = above + below > 0 ? (above - below) / (above + below) : 0;
  return { level, upward: share * Math.min(1, stillS / rule.enoughS) };
}
