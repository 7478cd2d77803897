import type { Random } from '../random.ts';
import { type MoveShape, wayGone } from '../smooth-move.ts';
import { drawRise, type RiseFamily, type RiseShape, risenAfter, shareRisen } from './rise-shape.ts';

/** How a person presses once: from nothing to a plateau and back. */
export interface Effort {
  /**
   * the instant from which on the force of the effort is above zero until it is let go [s]; what went before and was over by
   * then (a dip, tension that crept in) is no part of it
   */
  readonly onsetS: number;
  /** plateau that is aimed at [N] */
  readonly plateauN: number;
  readonly rise: RiseShape;
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
  return effort.onsetS + risenAfter(effort.rise) + effort.holdS;
}

/**
 * Force of one effort above the baseline, without tremor.
 *
 * It rises as its {@link RiseShape} says, gives way evenly while it is held and is let go in a minimum-jerk move.
 *
 * @param effort - one effort [s, N]
 * @param yielding - share of the force lost by the end of the hold [-]
 * @param timeS - when [s]
 * @returns force [N]
 *
 * Source: ours; the families of rises name theirs
 */
export function effortForce(effort: Effort, yielding: number, timeS: number): number {
  const t = timeS - effort.onsetS;
  if (t <= 0) return 0;
  const risen = shareRisen(effort.rise, t);
  const endS = releaseTime(effort);
  const held = Math.min(1, Math.max(0, t / (endS - effort.onsetS)));
  const released = wayGone(smooth, (timeS - endS) / effort.releaseS);
  return effort.plateauN * risen * (1 - yielding * held) * (1 - released);
}

/** Where the numbers of an effort come from: its course, and the form of its rise. */
export interface EffortStreams {
  readonly course: Random;
  readonly rise: Random;
}

/**
 * An effort drawn at random.
 *
 * @param kind - strength ramp or as fast as possible [-]
 * @param onsetS - when it begins [s]
 * @param plateauN - force that is aimed at [N]
 * @param streams - to draw from [-]
 * @param family - form of the rise; drawn when left out [-]
 * @returns one effort [s, N]
 *
 * Source: ours; ramps held 3 s and fast efforts held 1 s are common practice
 */
export function drawEffort(
  kind: Effort['kind'],
  onsetS: number,
  plateauN: number,
  { course, rise }: EffortStreams,
  family?: RiseFamily,
): Effort {
  return {
    kind,
    onsetS,
    plateauN,
    rise: drawRise(kind, family, rise),
    holdS: kind === 'ramp' ? course.between(2.5, 4) : course.between(0.6, 1.2),
    releaseS: course.between(0.15, 0.6),
  };
}
