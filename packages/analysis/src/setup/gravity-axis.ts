import type { Vector, VectorSignal } from '../movement/orientation.ts';
import { standardDeviation } from '../signal/moments.ts';
import { median } from '../signal/order-statistics.ts';
import { type Guess, noGuess, type Weighed, weigh } from './guess.ts';
import type { GuessRule } from './setup-settings.ts';

/** An axis of a sensor and the way it points. */
export type SignedAxis = 'x+' | 'x-' | 'y+' | 'y-' | 'z+' | 'z-';

export const SIGNED_AXES = ['x+', 'x-', 'y+', 'y-', 'z+', 'z-'] as const satisfies readonly SignedAxis[];

export type GravityEvidence = 'gravity-along' | 'gravity-between' | 'no-gravity';

/** The axis that points up, with the direction that was measured. */
export interface GravityAxis extends Guess<SignedAxis, GravityEvidence> {
  /** up as the sensor sees it, unit length; null when nothing shows */
  readonly up: Vector | null;
}

/** Offset of an axis as a share of gravity, and wander of the body [-]; ours. */
const offsetShare = 0.015;
const wanderRad = 0.03;

/** Logistic odds per standard deviation that come closest to the normal distribution [-]; from memory, 1.702. */
const oddsPerDeviation = 1.7;

/** Lead over the next axis from which gravity lies along one of them, for the words alone [-]; ours. */
const clearLead = 0.2;

/**
 * The axis of the sensor that points up while it is worn and still: the one that carries most of gravity.
 *
 * An accelerometer at rest shows its support: the reading points up. How far the next axis is behind, against offset, sway
 * and noise, gives the confidence.
 *
 * @param acceleration - specific force while still, three axes, n >= 2 [any unit]
 * @param rule - when to ask, see {@link GuessRule} [-]
 * @returns the axis and the measured direction [-]
 * @throws {@link InputError} `too-short`; `not-finite`
 *
 * Source: definition of specific force; the normal distribution of the difference of two components
 */
export function gravityAxis(acceleration: VectorSignal, rule: GuessRule): GravityAxis {
  const middle = acceleration.map((axis) => median(axis));
  const size = Math.hypot(...middle);
  if (!(size > 0)) return { ...noGuess(SIGNED_AXES, { code: 'no-gravity', figures: {} }), up: null };
  const up: Vector = [middle[0] / size, middle[1] / size, middle[2] / size];
  const n = acceleration[0].length;
  const noise = Math.hypot(...acceleration.map((axis) => standardDeviation(axis))) / size / Math.sqrt(n);
  const u = Math.hypot(offsetShare, wanderRad, noise);
  const weighed = SIGNED_AXES.map((name, i): Weighed<SignedAxis> => {
    const share = (i % 2 === 0 ? 1 : -1) * up[i >> 1];
    // two components share their error: the axis that leads by d is right with odds exp(d / u), close to the normal tail
    return [name, (oddsPerDeviation * share) / (Math.SQRT2 * u)];
  });
  const lead = [...up].map((value) => Math.abs(value)).sort((a, b) => b - a);
  const angle = (Math.acos(Math.min(1, lead[0])) * 180) / Math.PI;
  const code = lead[0] - lead[1] > clearLead ? 'gravity-along' : 'gravity-between';
  return { ...weigh(weighed, -Infinity, { code, figures: { degrees: angle } }, rule), up };
}
