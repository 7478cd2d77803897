import type { VectorSignal } from '../movement/orientation.ts';

/** How the gyroscope and the direction of gravity go together. */
export interface TurnAgreement {
  /** radians a second in one unit of the gyroscope; below 0 when it turns against gravity [rad/s per unit] */
  readonly scale: number;
  /** correlation of the two, -1 to 1 [-] */
  readonly correlation: number;
}

/** Span over which a turn is summed and acceleration averages out [s]; ours. */
const spanS = 0.4;

/** Sums over one span: acceleration, and the expected change weighed from 0 to 1 and from 1 to 0. */
interface Span {
  readonly level: number[];
  readonly rising: number[];
  readonly falling: number[];
  count: number;
}

function emptySpan(): Span {
  return { level: [0, 0, 0], rising: [0, 0, 0], falling: [0, 0, 0], count: 0 };
}

/**
 * How the turn that a gyroscope shows goes with the turn of gravity as the accelerometer shows it.
 *
 * Seen from a sensor that turns at w, a direction that is fixed in the world goes by dg/dt = -w x g. Summed over short spans,
 * the change of gravity is held against the cross product of the two: their ratio is the unit of the gyroscope, whatever the
 * unit of the accelerometer; a ratio below 0 is a mirrored or turned axis.
 *
 * @param timesS - sample times [s]
 * @param acceleration - specific force, three axes [any unit]
 * @param turn - angular velocity, the same axes [any unit]
 * @returns scale and correlation; null when nothing turns or there are too few samples [rad/s per unit]
 *
 * Source: kinematics of a rigid body (transport theorem)
 */
export function turnAgreement(
  timesS: Float64Array,
  acceleration: VectorSignal,
  turn: VectorSignal,
): TurnAgreement | null {
  const n = timesS.length;
  const at = (signal: VectorSignal, i: number, axis: number): number => signal[axis % 3][i];
  let [both, byTurn, byGravity, spans] = [0, 0, 0, 0];
  let from = 0;
  let span: Span = emptySpan();
  let before: Span | null = null;
  for (let i = 1; i < n; i++) {
    const stepS = timesS[i] - timesS[i - 1];
    const share = Math.min(1, ((timesS[i] + timesS[i - 1]) / 2 - timesS[from]) / spanS);
    for (let axis = 0; axis < 3; axis++) {
      const [b, c] = [axis + 1, axis + 2];
      // -(w x g)
      const product = (k: number): number =>
        at(turn, k, c) * at(acceleration, k, b) - at(turn, k, b) * at(acceleration, k, c);
      const part = (stepS * (product(i) + product(i - 1))) / 2;
      span.rising[axis] += share * part;
      span.falling[axis] += (1 - share) * part;
      span.level[axis] += at(acceleration, i, axis);
    }
    span.count++;
    if (timesS[i] - timesS[from] < spanS) continue;
    if (before !== null) {
      for (let axis = 0; axis < 3; axis++) {
        // a mean less the mean before it is the change between, weighed by a triangle over both spans
        const change = span.level[axis] / span.count - before.level[axis] / before.count;
        const expected = before.rising[axis] + span.falling[axis];
        both += change * expected;
        byTurn += expected ** 2;
        byGravity += change ** 2;
      }
      spans++;
    }
    before = span;
    span = emptySpan();
    from = i;
  }
  if (spans < 5 || !(byTurn > 0) || !(byGravity > 0)) return null;
  return { scale: both / byTurn, correlation: both / Math.sqrt(byTurn * byGravity) };
}
