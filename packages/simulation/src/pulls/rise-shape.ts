import type { Random } from '../random.ts';
import { wayGone } from '../smooth-move.ts';

/** Families of rises of a force. In each the force is zero up to the onset and above zero from there on. */
export const RISE_FAMILIES = ['power', 'exponential', 'sigmoid', 'smooth', 'second-order', 'take-up'] as const;

/** Family of a rise. */
export type RiseFamily = (typeof RISE_FAMILIES)[number];

/** How a force rises from nothing to its plateau. */
export interface RiseShape {
  readonly family: RiseFamily;
  /** time constant; `smooth`: the duration [s] */
  readonly riseS: number;
  /** `power`, `sigmoid`: power of time with which the force starts; of the second phase of `take-up` [-] */
  readonly power: number;
  /** `take-up`: length of the slow first phase [s] and share of the plateau reached in it [-] */
  readonly takeUpS: number;
  readonly takeUpShare: number;
  /** `take-up`: power of time in the first phase [-] */
  readonly takeUpPower: number;
  /** `smooth`: the way of it [-] */
  readonly move: 'minimum-jerk' | 'cosine' | 'plateau';
}

function powerRise(x: number, power: number): number {
  return x <= 0 ? 0 : -Math.expm1(-(x ** power));
}

/**
 * Share of the plateau that a rise has reached.
 *
 * - `power`: 1 - exp(-x^p), x the time over the time constant, p the power
 * - `exponential`: 1 - exp(-x)
 * - `sigmoid`: x^p / (1 + x^p)
 * - `smooth`: a minimum-jerk, raised-cosine or evenly sped move
 * - `second-order`: 1 - (1 + x) exp(-x), critically damped
 * - `take-up`: slack is taken up as a power of time, then comes a `power` rise; the onset is that of the take-up
 *
 * @param shape - family and sizes, see {@link RiseShape} [s, -]
 * @param afterS - time since the onset [s]
 * @returns share, 0 up to the onset [-]
 *
 * Source: all from memory; exponential: Wilkie (1950), J Physiol 110:249-280; sigmoid: Hill (1910), J Physiol 40:iv-vii;
 * minimum jerk: Flash & Hogan (1985), J Neurosci 5:1688-1703; second order: Milner-Brown, Stein & Yemm (1973), J Physiol
 * 230:359-370; take-up: toe region of a tendon in vivo, Maganaris & Paul (1999), J Physiol 521:307-313, and soft restraints,
 * Maffiuletti et al. (2016), Eur J Appl Physiol 116:1091-1116; the power and all sizes are ours
 */
export function shareRisen(shape: RiseShape, afterS: number): number {
  if (afterS <= 0) return 0;
  const x = afterS / shape.riseS;
  switch (shape.family) {
    case 'power':
      return powerRise(x, shape.power);
    case 'exponential':
      return -Math.expm1(-x);
    case 'sigmoid':
      return x ** shape.power / (1 + x ** shape.power);
    case 'smooth':
      return wayGone({ kind: shape.move, skew: 0, share: 0.3 }, x);
    case 'second-order':
      return 1 - (1 + x) * Math.exp(-x);
    case 'take-up': {
      const taken = Math.min(1, afterS / shape.takeUpS) ** shape.takeUpPower;
      const later = powerRise((afterS - shape.takeUpS) / shape.riseS, shape.power);
      return shape.takeUpShare * taken + (1 - shape.takeUpShare) * later;
    }
    default:
      return shape.family satisfies never;
  }
}

/**
 * Time from the onset at which a rise is nearly done.
 *
 * @param shape - see {@link RiseShape} [s, -]
 * @returns the end of a `smooth` rise, four time constants of another [s]
 *
 * Source: ours
 */
export function risenAfter(shape: RiseShape): number {
  switch (shape.family) {
    case 'smooth':
      return shape.riseS;
    case 'second-order':
      return 7 * shape.riseS;
    case 'take-up':
      return shape.takeUpS + 4 * shape.riseS;
    default:
      return 4 * shape.riseS;
  }
}

/** Time constants of the families of fast rises over that of the family `power`: all take about as long from 20 to 80 %. */
const fastScale: Readonly<Record<RiseFamily, number>> = {
  power: 1,
  exponential: 1,
  sigmoid: 0.85,
  smooth: 2.4,
  'second-order': 0.5,
  'take-up': 0.9,
};

/**
 * A rise drawn at random.
 *
 * @param kind - strength ramp or as fast as possible [-]
 * @param family - to take instead of drawing one; a ramp is `smooth` or `take-up` whatever else is asked for [-]
 * @param random - stream to draw from; every family takes as many numbers from it [-]
 * @returns a rise [s, -]
 *
 * Source: ours; ramps of 2-3 s are common practice
 */
export function drawRise(kind: 'ramp' | 'fast', family: RiseFamily | undefined, random: Random): RiseShape {
  const drawn = RISE_FAMILIES[random.integer(0, RISE_FAMILIES.length - 1)];
  const chosen = family ?? drawn;
  const length = random.between(0, 1);
  const power = random.between(0, 1);
  const takeUp = random.between(0, 1);
  const takeUpShare = random.between(0.02, 0.1);
  const takeUpPower = random.between(1.2, 2.6);
  const move = random.integer(0, 2);
  if (kind === 'ramp') {
    return {
      family: chosen === 'take-up' ? 'take-up' : 'smooth',
      riseS: chosen === 'take-up' ? 0.6 + 0.6 * length : 1.2 + 1.8 * length,
      power: 1.2 + 0.8 * power,
      takeUpS: 0.2 + 0.4 * takeUp,
      takeUpShare,
      takeUpPower,
      move: (['minimum-jerk', 'cosine', 'plateau'] as const)[move],
    };
  }
  return {
    family: chosen,
    riseS: (0.06 + 0.14 * length) * fastScale[chosen],
    power: chosen === 'sigmoid' ? 2 + 1.2 * power : 1 + 1.2 * power,
    takeUpS: 0.05 + 0.1 * takeUp,
    takeUpShare,
    takeUpPower,
    move: move === 0 ? 'minimum-jerk' : 'cosine',
  };
}
