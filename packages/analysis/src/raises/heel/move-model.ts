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
 * The parameters of a repetition as one array, in the order that {@link moveLevels} takes.
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

/** Level along one way, for the samples of it; returns the first one after. */
function goAlong(
  table: Float64Array,
  timesS: Float64Array,
  first: number,
  fromS: number,
  toS: number,
  from: number,
  to: number,
  levels: Float64Array,
): number {
  const length = toS - fromS;
  const span = to - from;
  let i = first;
  for (; i < timesS.length && timesS[i] < toS; i++)
    levels[i] = from + span * readShape(table, (timesS[i] - fromS) / length);
  return i;
}

/**
 * Levels of an up-hold-down.
 *
 * @param p - the seven parameters of the repetition, its times in order [s, m]
 * @param timesS - the instants, in order [s]
 * @param up - shape of the way up [-]
 * @param down - shape of the way down [-]
 * @param levels - receives the level at each instant [m]
 *
 * Source: definition
 */
export function moveLevels(
  p: Float64Array,
  timesS: Float64Array,
  up: MoveShape,
  down: MoveShape,
  levels: Float64Array,
): void {
  let i = 0;
  for (; i < timesS.length && timesS[i] <= p[0]; i++) levels[i] = p[4];
  i = goAlong(up.way, timesS, i, p[0], p[1], p[4], p[5], levels);
  for (; i < timesS.length && timesS[i] <= p[2]; i++) levels[i] = p[5];
  i = goAlong(down.way, timesS, i, p[2], p[3], p[5], p[6], levels);
  for (; i < timesS.length; i++) levels[i] = p[6];
}

/** First samples of the parts of a move: of the way up, of the hold, of the way down, of the rest after it. */
export interface PartsAt {
  readonly up: number;
  readonly hold: number;
  readonly down: number;
  readonly rest: number;
}

/** Derivatives along one way by its two times and the two levels that it joins, in the columns of those, for the samples of it. */
function slopesAlong(
  { way, speed }: MoveShape,
  timesS: Float64Array,
  first: number,
  last: number,
  p: Float64Array,
  startsAt: number,
  from: number,
  slopes: Float64Array,
): void {
  const [ofStart, ofEnd, ofFrom, ofTo] = [startsAt, startsAt + 1, from, from + 1].map((at) => at * timesS.length);
  const startS = p[startsAt];
  const length = p[startsAt + 1] - startS;
  const span = p[from + 1] - p[from];
  for (let i = first; i < last; i++) {
    const u = (timesS[i] - startS) / length;
    const gone = readShape(way, u);
    const pull = (span * readShape(speed, u)) / length;
    slopes[ofStart + i] = pull * (u - 1);
    slopes[ofEnd + i] = -pull * u;
    slopes[ofFrom + i] = 1 - gone;
    slopes[ofTo + i] = gone;
  }
}

/**
 * Derivatives of the levels of an up-hold-down by its parameters, a column for each.
 *
 * @param p - the seven parameters of the repetition, its times in order [s, m]
 * @param timesS - the instants, in order [s]
 * @param up - shape of the way up [-]
 * @param down - shape of the way down [-]
 * @param slopes - receives column after column, each as long as the times [m/s, -]
 * @returns where the parts begin; nothing depends on a way before it [index]
 *
 * Source: definition
 */
export function moveSlopes(
  p: Float64Array,
  timesS: Float64Array,
  up: MoveShape,
  down: MoveShape,
  slopes: Float64Array,
): PartsAt {
  const count = timesS.length;
  slopes.fill(0, 0, moveSize * count);
  let i = 0;
  for (; i < count && timesS[i] <= p[0]; i++) slopes[4 * count + i] = 1;
  const rise = i;
  while (i < count && timesS[i] < p[1]) i++;
  const hold = i;
  slopesAlong(up, timesS, rise, hold, p, 0, 4, slopes);
  for (; i < count && timesS[i] <= p[2]; i++) slopes[5 * count + i] = 1;
  const fall = i;
  while (i < count && timesS[i] < p[3]) i++;
  const rest = i;
  slopesAlong(down, timesS, fall, rest, p, 2, 5, slopes);
  slopes.fill(1, 6 * count + rest, 7 * count);
  return { up: rise, hold, down: fall, rest };
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

/** How much stiffer a tie is than what it ties [-]; ours. */
const stiffness = 1e8;

/**
 * Ties the end of the way up to the start of the way down, so that a step closes a hold and does not turn it round: a hold cannot
 * last less than no time.
 *
 * @param p - the seven parameters the step is added to [s, m]
 * @param matrix - normal matrix of the repetition, row after row; the lower triangle is added to [-]
 * @param size - length of a row of it [-]
 * @param sides - right-hand sides, a row for each parameter, of which the first column is the gradient [-]
 * @param sideSize - length of a row of those [-]
 *
 * Source: penalty method (Nocedal & Wright, Numerical Optimization, chapter 17)
 */
export function tieHold(p: Float64Array, matrix: Float64Array, size: number, sides: Float64Array, sideSize = 1): void {
  const tie = stiffness * Math.max(matrix[size + 1], matrix[2 * size + 2]);
  const open = p[2] - p[1];
  matrix[size + 1] += tie;
  matrix[2 * size + 2] += tie;
  matrix[2 * size + 1] -= tie;
  sides[sideSize] += tie * open;
  sides[2 * sideSize] -= tie * open;
}
