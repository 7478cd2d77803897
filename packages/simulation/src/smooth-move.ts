/** How a limb goes from one posture to another; `skew` moves the fastest moment (0 = as the kind has it). */
export interface MoveShape {
  readonly kind: 'minimum-jerk' | 'cosine' | 'minimum-snap' | 'plateau' | 'two-phase';
  /** time warp, -0.6 to 0.6: positive is early and quick, then slow [-] */
  readonly skew: number;
  /** two-phase: share of the way done in the first phase; plateau: share of the time spent speeding up [-] */
  readonly share: number;
}

/** One smooth change of a level, in the unit of that level. */
export interface Move {
  readonly fromS: number;
  readonly toS: number;
  readonly from: number;
  readonly to: number;
  readonly shape: MoveShape;
}

function minimumJerk(u: number): number {
  return u * u * u * (10 + u * (-15 + 6 * u)); // Flash and Hogan 1985, J Neurosci 5:1688
}

function minimumSnap(u: number): number {
  return u * u * u * u * (35 + u * (-84 + u * (70 - 20 * u)));
}

function clamp(u: number): number {
  return u <= 0 ? 0 : u >= 1 ? 1 : u;
}

/** Way gone when the speed climbs by a smooth step over the first `ramp`, stays, and falls in the same manner. */
function plateau(u: number, ramp: number): number {
  const area = 1 - ramp;
  const rising = (x: number): number => (ramp * (x * x * x - (x * x * x * x) / 2)) / area;
  if (u < ramp) return rising(u / ramp);
  if (u > 1 - ramp) return 1 - rising((1 - u) / ramp);
  return (u - ramp / 2) / area;
}

/** Way gone in two overlapping minimum-jerk moves with a slower moment between. */
function twoPhase(u: number, share: number): number {
  return share * minimumJerk(clamp(u / 0.62)) + (1 - share) * minimumJerk(clamp((u - 0.38) / 0.62));
}

/**
 * Share of the way gone, from 0 to 1.
 *
 * Every kind starts and ends at speed zero; all but `cosine` also without a jump in acceleration.
 *
 * @param shape - kind, skew and share of the move [-]
 * @param time - share of the duration gone; below 0 gives 0, above 1 gives 1 [-]
 * @returns share of the way [-]
 *
 * Source: Flash & Hogan (1985), J Neurosci 5:1688-1703 for minimum jerk; the other kinds are ours
 */
export function wayGone(shape: MoveShape, time: number): number {
  if (time <= 0) return 0;
  if (time >= 1) return 1;
  const u = time + shape.skew * time * (1 - time);
  switch (shape.kind) {
    case 'minimum-jerk':
      return minimumJerk(u);
    case 'cosine':
      return (1 - Math.cos(Math.PI * u)) / 2;
    case 'minimum-snap':
      return minimumSnap(u);
    case 'plateau':
      return plateau(u, shape.share);
    case 'two-phase':
      return twoPhase(u, shape.share);
    default:
      return shape.kind satisfies never;
  }
}

/**
 * A smooth there-and-back: 0 at both ends with two derivatives, 1 in the middle.
 *
 * @param time - share of the duration gone; outside 0 to 1 gives 0 [-]
 * @returns share of the greatest value [-]
 *
 * Source: ours
 */
export function thereAndBack(time: number): number {
  return time <= 0 || time >= 1 ? 0 : 64 * (time * (1 - time)) ** 3;
}
