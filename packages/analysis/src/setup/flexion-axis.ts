import { componentAlong, dot, principalAxis, type Vector, type VectorSignal } from '../movement/orientation.ts';
import { median } from '../signal/order-statistics.ts';
import { SIGNED_AXES, type SignedAxis } from './gravity-axis.ts';
import type { GuessRule } from './setup-settings.ts';

export type FlexionEvidence = 'one-axis' | 'several-axes' | 'no-turn';

/** The axis about which the foot turns in calibration raises. */
export interface FlexionAxis {
  /** unit vector about which the first move turns positively; null when nothing turns */
  readonly axis: Vector | null;
  /** the axis of the sensor that lies nearest to it */
  readonly nearest: SignedAxis | null;
  /** share of all turning that goes about this axis, 0 to 1 [-] */
  readonly share: number;
  /** probability that the axis is right to 10 degrees, and its sign, 0 to 1 [-] */
  readonly confidence: number;
  readonly asks: boolean;
  /** less than the share that is asked for goes about one axis: the sensor is to be seated anew */
  readonly reseat: boolean;
  readonly evidence: { readonly code: FlexionEvidence; readonly figures: Readonly<Record<string, number>> };
}

/** Least share of the turning that one axis explains. Common practice, no source. */
const shareLeast = 0.8;

/** Turn that is a move [rad]; ours. */
const moveRad = 0.15;

/** Odds that the axis is right, from the odds of its share and from the turn: fitted on simulated sensors; ours. */
const fitted = { base: 1.2, bySharedOdds: 1, leastMoves: 3 };

interface Moves {
  readonly count: number;
  /** sign of the first one; 0 when there is none */
  readonly first: number;
}

/** Turns from one resting angle to another: counted where the angle leaves its last turning point by a move. */
function movesOf(timesS: Float64Array, rate: Float64Array): Moves {
  let [angle, least, most, count, first, way] = [0, 0, 0, 0, 0, 0];
  for (let i = 1; i < rate.length; i++) {
    angle += ((rate[i] + rate[i - 1]) / 2) * (timesS[i] - timesS[i - 1]);
    least = Math.min(least, angle);
    most = Math.max(most, angle);
    const rose = way <= 0 && angle - least >= moveRad;
    const fell = way >= 0 && most - angle >= moveRad;
    if (!rose && !fell) continue;
    way = rose ? 1 : -1;
    count++;
    if (first === 0) first = way;
    least = angle;
    most = angle;
  }
  return { count, first };
}

function nearestOf(axis: Vector): SignedAxis {
  const i = axis.reduce((best, value, at) => (Math.abs(value) > Math.abs(axis[best]) ? at : best), 0);
  return SIGNED_AXES[2 * i + (axis[i] > 0 ? 0 : 1)];
}

/**
 * The axis about which the foot turns in a few raises: the direction in which the rate of turn spreads most; its sign is
 * that of the first move, which goes up.
 *
 * @param timesS - sample times [s]
 * @param turn - angular velocity, three axes [rad/s]
 * @param rule - when to ask, see {@link GuessRule} [-]
 * @returns the axis with the share of the turning that goes about it [-]
 *
 * Source: Pearson (1901), Phil Mag 2:559-572 (principal axis); 80 % is common practice, no source
 */
export function flexionAxis(timesS: Float64Array, turn: VectorSignal, rule: GuessRule): FlexionAxis {
  const none = { axis: null, nearest: null, share: 0, confidence: 0, asks: true, reseat: false };
  const centre: Vector = [median(turn[0]), median(turn[1]), median(turn[2])];
  const weights = new Float64Array(timesS.length).fill(1);
  const principal = principalAxis(turn, weights, centre);
  if (principal === undefined) return { ...none, evidence: { code: 'no-turn', figures: {} } };
  const about = componentAlong(turn, principal).map((value) => value - dot(centre, principal));
  let [along, all] = [0, 0];
  for (let i = 0; i < about.length; i++) {
    along += about[i] ** 2;
    for (let axis = 0; axis < 3; axis++) all += (turn[axis][i] - centre[axis]) ** 2;
  }
  const share = along / all;
  const { count, first } = movesOf(timesS, about);
  if (count === 0) return { ...none, share, evidence: { code: 'no-turn', figures: {} } };
  const axis: Vector = [first * principal[0], first * principal[1], first * principal[2]];
  const odds = fitted.base + fitted.bySharedOdds * Math.log(share / Math.max(1e-6, 1 - share));
  const enough = Math.min(1, count / (2 * fitted.leastMoves));
  const confidence = enough / (1 + Math.exp(-odds));
  return {
    axis,
    nearest: nearestOf(axis),
    share,
    confidence,
    asks: confidence < rule.askBelow,
    reseat: share < shareLeast,
    evidence: {
      code: share < shareLeast ? 'several-axes' : 'one-axis',
      figures: { percent: 100 * share, moves: count },
    },
  };
}
