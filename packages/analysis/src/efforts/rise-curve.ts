/** A force that may take up slack first, starts as a power of time, and settles. */
export interface RiseCurve {
  /** from here on the force is above zero [s] */
  readonly startS: number;
  /** length of the take-up of slack [s], its share of the height and the power of time in it [-]; 0 s and 0 without one */
  readonly takeUpS: number;
  readonly takeUpShare: number;
  readonly takeUpPower: number;
  /** time constant and first power of the rise itself [s, -] */
  readonly riseS: number;
  readonly power: number;
  /** how it settles: 0 as an exponential, 1 as x / (1 + x), below 0 within a finite time [-] */
  readonly settling: number;
  readonly height: number;
}

/** Settling below this size is exponential: the limit of the formula [-]. */
const nearlyNone = 1e-6;

function shareRisen(x: number, power: number, settling: number): number {
  if (x <= 0) return 0;
  const grown = x ** power;
  if (Math.abs(settling) < nearlyNone) return -Math.expm1(-grown);
  return settling * grown <= -1 ? 1 : -Math.expm1(-Math.log1p(settling * grown) / settling);
}

/**
 * Force on a rise curve. Without take-up it is height (1 - (1 + c x^p)^(-1/c)), x the time since the start over the time
 * constant, p the power and c the settling; 1 - exp(-x^p) for c = 0.
 *
 * @param curve - the curve [s, N or N.m]
 * @param timeS - when [s]
 * @returns force above the resting level, 0 before the start [unit of height]
 *
 * Source: form of the distribution of Burr (1942), Ann Math Stat 13:215-232, type XII, which holds exponential, sigmoid and
 * finite rises; the take-up is ours
 */
export function forceOnCurve(curve: RiseCurve, timeS: number): number {
  const since = timeS - curve.startS;
  if (since <= 0) return 0;
  const rising = shareRisen((since - curve.takeUpS) / curve.riseS, curve.power, curve.settling);
  if (curve.takeUpShare === 0) return curve.height * rising;
  const taken = since >= curve.takeUpS ? 1 : (since / curve.takeUpS) ** curve.takeUpPower;
  return curve.height * (curve.takeUpShare * taken + (1 - curve.takeUpShare) * rising);
}
