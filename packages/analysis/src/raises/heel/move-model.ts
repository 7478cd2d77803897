import { type MoveShape, readShape } from './move-shape.ts';

/** Up, hold, down: times and levels of one repetition. */
export interface Move {
  readonly startS: number;
  readonly highFromS: number;
  readonly highToS: number;
  readonly endS: number;
  /** level before, at the top, and after [m] */
  readonly before: number;
  readonly top: number;
  readonly after: number;
}

/** Parameters of one repetition: start, high from, high to, end [s]; level before, at the top, after [m]. */
export const moveSize = 7;

/**
 * The parameters of a repetition as one array, in the order that {@link moveLevel} takes.
 *
 * @param move - times and levels [s, m]
 * @returns start, high from, high to, end; level before, at the top, after [s, m]
 *
 * Source: definition
 */
export function parametersOf(move: Move): Float64Array {
  const { startS, highFromS, highToS, endS, before, top, after } = move;
  return Float64Array.of(startS, highFromS, highToS, endS, before, top, after);
}

/**
 * The repetition that belongs to an array of parameters.
 *
 * @param p - see {@link parametersOf} [s, m]
 * @returns times and levels [s, m]
 *
 * Source: definition
 */
export function moveOf([startS, highFromS, highToS, endS, before, top, after]: ArrayLike<number> &
  Iterable<number>): Move {
  return { startS, highFromS, highToS, endS, before, top, after };
}

/**
 * Level of an up-hold-down at one instant.
 *
 * @param p - the seven parameters of the repetition [s, m]
 * @param timeS - the instant [s]
 * @param up - shape of the way up [-]
 * @param down - shape of the way down [-]
 * @param slopes - receives the derivative by each parameter [m/s, -]
 * @returns the level [m]
 *
 * Source: definition
 */
export function moveLevel(
  p: Float64Array,
  timeS: number,
  up: MoveShape,
  down: MoveShape,
  slopes: Float64Array,
): number {
  slopes.fill(0);
  if (timeS <= p[0]) {
    slopes[4] = 1;
    return p[4];
  }
  if (timeS < p[1]) {
    const length = p[1] - p[0];
    const u = (timeS - p[0]) / length;
    const way = readShape(up.way, u);
    const pull = ((p[5] - p[4]) * readShape(up.speed, u)) / length;
    slopes[0] = pull * (u - 1);
    slopes[1] = -pull * u;
    slopes[4] = 1 - way;
    slopes[5] = way;
    return p[4] + (p[5] - p[4]) * way;
  }
  if (timeS <= p[2]) {
    slopes[5] = 1;
    return p[5];
  }
  if (timeS < p[3]) {
    const length = p[3] - p[2];
    const u = (timeS - p[2]) / length;
    const way = readShape(down.way, u);
    const pull = ((p[6] - p[5]) * readShape(down.speed, u)) / length;
    slopes[2] = pull * (u - 1);
    slopes[3] = -pull * u;
    slopes[5] = 1 - way;
    slopes[6] = way;
    return p[5] + (p[6] - p[5]) * way;
  }
  slopes[6] = 1;
  return p[6];
}

/**
 * Puts the four times of a repetition in order, in place, each way at least as long as given.
 *
 * @param p - the seven parameters [s, m]
 * @param leastS - shortest way up or down [s]
 *
 * Source: ours
 */
export function orderTimes(p: Float64Array, leastS: number): void {
  if (p[2] < p[1]) {
    const middle = (p[1] + p[2]) / 2;
    p[1] = middle;
    p[2] = middle;
  }
  p[0] = Math.min(p[0], p[1] - leastS);
  p[3] = Math.max(p[3], p[2] + leastS);
}
