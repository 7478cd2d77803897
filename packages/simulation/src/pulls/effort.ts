import type { Random } from '../random.ts';
import { type MoveShape, wayGone } from '../smooth-move.ts';

/** How a person presses once: from nothing to a plateau and back. */
export interface Effort {
  /** force leaves the baseline here [s] */
  readonly onsetS: number;
  /** plateau that is aimed at [N] */
  readonly plateauN: number;
  /** `fast`: time constant of the rise; `ramp`: its duration [s] */
  readonly riseS: number;
  /** `fast`: 1 is exponential, more starts softly [-] */
  readonly power: number;
  readonly kind: 'ramp' | 'fast';
  readonly holdS: number;
  readonly releaseS: number;
}

const smooth: MoveShape = { kind: 'minimum-jerk', skew: 0, share: 0 };

/**
 * Time at which a held effort is let go.
 *
 * @param effort - one effort [s, N]
 * @returns end of the hold [s]
 *
 * Source: ours
 */
export function releaseTime(effort: Effort): number {
  const risenS = effort.kind === 'ramp' ? effort.riseS : 4 * effort.riseS;
  return effort.onsetS + risenS + effort.holdS;
}

/**
 * Force of one effort above the baseline, without tremor.
 *
 * A fast effort rises as plateau * (1 - exp(-(t/riseS)^power)), a ramp as a minimum-jerk move; both are let go in a
 * minimum-jerk move and give way evenly while they are held.
 *
 * @param effort - one effort [s, N]
 * @param yielding - share of the force lost by the end of the hold [-]
 * @param timeS - when [s]
 * @returns force [N]
 *
 * Source: exponential rise as in Maffiuletti et al. (2016), Eur J Appl Physiol 116:1091-1116; the rest is ours
 */
export function effortForce(effort: Effort, yielding: number, timeS: number): number {
  const t = timeS - effort.onsetS;
  if (t <= 0) return 0;
  const risen =
    effort.kind === 'ramp' ? wayGone(smooth, t / effort.riseS) : 1 - Math.exp(-((t / effort.riseS) ** effort.power));
  const endS = releaseTime(effort);
  const held = Math.min(1, Math.max(0, t / (endS - effort.onsetS)));
  const released = wayGone(smooth, (timeS - endS) / effort.releaseS);
  return effort.plateauN * risen * (1 - yielding * held) * (1 - released);
}

/**
 * An effort drawn at random.
 *
 * @param kind - strength ramp or as fast as possible [-]
 * @param onsetS - when it begins [s]
 * @param plateauN - force that is aimed at [N]
 * @param random - stream to draw from [-]
 * @returns one effort [s, N]
 *
 * Source: ours; ramps of 2-3 s held 3 s, fast efforts held 1 s are common practice
 */
export function drawEffort(kind: Effort['kind'], onsetS: number, plateauN: number, random: Random): Effort {
  const ramp = kind === 'ramp';
  return {
    kind,
    onsetS,
    plateauN,
    riseS: ramp ? random.between(1.2, 3) : random.between(0.06, 0.2),
    power: random.between(1, 2.2),
    holdS: ramp ? random.between(2.5, 4) : random.between(0.6, 1.2),
    releaseS: random.between(0.15, 0.6),
  };
}
