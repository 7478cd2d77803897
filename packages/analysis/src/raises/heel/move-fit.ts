import { type ColumnProducts, columnProducts, normalEquations } from './column-products.ts';
import { fitRoom } from './fit-room.ts';
import { softMisfit, softRoot, whiten, whitenFour } from './innovations.ts';
import { solveSideBySide, solveSymmetric } from './linear-solve.ts';
import {
  type Move,
  moveLevels,
  moveOf,
  moveSize,
  moveSlopes,
  orderTimes,
  parametersOf,
  tieHold,
} from './move-model.ts';
import type { MoveShape } from './move-shape.ts';
import { addPartsPrior, type PartsPrior, partsMisfit } from './parts-prior.ts';
import type { Whitening } from './sway-noise.ts';

/** A move with how well it fits. */
export interface MoveFit extends Move {
  /** robust misfit of the way up and of the way down, summed over samples: -2 log-likelihood up to a constant [-] */
  readonly upMisfit: number;
  readonly downMisfit: number;
  /** standard deviation of the departure of the level from the move [m] */
  readonly residualSd: number;
  /** standard deviation of the whitened departures: 1 when the noise was as expected [-] */
  readonly surprise: number;
  /** standard uncertainties from the curvature of the fit [s], [m] */
  readonly startU: number;
  readonly topU: number;
  readonly endU: number;
  readonly levelU: number;
}

/** What a fit goes by. */
export interface FitData {
  /** sample times at an even interval [s] */
  readonly timesS: Float64Array;
  /** level at those times [m] */
  readonly level: Float64Array;
  /** makes the departures independent, see {@link Whitening} */
  readonly whitening: Whitening;
  /** how long the parts usually last in the set, where that is known [s] */
  readonly parts?: PartsPrior | undefined;
}

/** Unknowns with the one that fills the last four: rows of the normal equations are that long. */
const size = columnProducts(moveSize).unknowns;

/** Greatest number of Gauss-Newton rounds; most fits need 5 to 10. */
const rounds = 25;

/** How well a move fits: whitened departures with the roots by which they count less, and the misfit. */
interface Tried {
  readonly departures: Float64Array;
  readonly white: Float64Array;
  readonly roots: Float64Array;
  cost: number;
  upCost: number;
}

/** Room of a fit: for two sets of parameters that are tried, and for the normal equations. */
function roomOf(count: number): { readonly best: Tried; readonly tried: Tried; readonly normal: Normal } {
  const room = fitRoom((2 * size + 6) * count + size * size + size);
  const column = (at: number, columns = 1): Float64Array => room.subarray(at * count, (at + columns) * count);
  const rest = room.subarray((2 * size + 6) * count);
  const [matrix, gradient] = [rest.subarray(0, size * size), rest.subarray(size * size)];
  const normal = { unknowns: size, matrix, gradient, white: column(0, size), weighted: column(size, size) };
  const [best, tried] = [2 * size, 2 * size + 3].map((at) => ({
    departures: column(at),
    white: column(at + 1),
    roots: column(at + 2),
    cost: 0,
    upCost: 0,
  }));
  return { best, tried, normal };
}

/** Robust misfit at one set of parameters. */
function tryMove(q: Float64Array, data: FitData, up: MoveShape, down: MoveShape, tried: Tried): void {
  const { timesS, level, whitening } = data;
  const { departures, white, roots } = tried;
  moveLevels(q, timesS, up, down, departures);
  for (let i = 0; i < departures.length; i++) departures[i] = level[i] - departures[i];
  whiten(whitening, departures, white);
  const middle = (q[1] + q[2]) / 2;
  let cost = 0;
  let upCost = 0;
  for (let i = 0; i < white.length; i++) {
    const root = softRoot(white[i] * white[i]);
    const misfit = softMisfit(root);
    roots[i] = root;
    cost += misfit;
    if (timesS[i] < middle) upCost += misfit;
  }
  if (data.parts !== undefined) {
    const misfit = partsMisfit(data.parts, q);
    cost += misfit;
    upCost += misfit / 2;
  }
  tried.cost = cost;
  tried.upCost = upCost;
}

/** Gradient and curvature of the misfit at the parameters that were tried. */
interface Normal extends ColumnProducts {
  readonly white: Float64Array;
  readonly weighted: Float64Array;
}

function assemble(
  q: Float64Array,
  data: FitData,
  up: MoveShape,
  down: MoveShape,
  { white: departures, roots }: Tried,
  normal: Normal,
): void {
  const { timesS, whitening } = data;
  const { white, weighted } = normal;
  const count = timesS.length;
  const at = moveSlopes(q, timesS, up, down, white);
  white.fill(0, moveSize * count);
  weighted.fill(0, moveSize * count);
  whitenFour(whitening, white, 0, at.up);
  whitenFour(whitening, white, 4, 0);
  for (let i = 0; i < count; i++) {
    const weight = 1 / roots[i];
    for (let at = i; at < moveSize * count; at += count) weighted[at] = weight * white[at];
  }
  normalEquations(white, weighted, departures, [at.up, at.up, at.down, at.down, 0, at.up, at.down, count], normal);
  if (data.parts !== undefined) addPartsPrior(data.parts, q, size, normal);
}

/** A fit that has settled, in its room: gone with the next one. */
interface Settled {
  readonly p: Float64Array;
  readonly best: Tried;
  /** curvature there, where it was worked out already */
  readonly normal: Normal;
  readonly isCurrent: boolean;
}

/** What a round has to gain of the misfit for another one to be worth it: a constant, and a share of the misfit [-]; both ours. */
interface Worthwhile {
  readonly gain: number;
  readonly share: number;
}

/** For times and their uncertainties. */
const exactly: Worthwhile = { gain: 1e-3, share: 1e-4 };

/** For the misfit alone, which differs by tens where it tells anything. */
const roughly: Worthwhile = { gain: 0.3, share: 3e-3 };

/** Step of a damped round; from parameters that are given, one that closes the hold. */
function solveDamped(
  normal: Normal,
  damping: number,
  damped: Float64Array,
  step: Float64Array,
  closing?: Float64Array,
): boolean {
  damped.set(normal.matrix);
  step.set(normal.gradient);
  for (let a = 0; a < moveSize; a++) damped[a * size + a] = damped[a * size + a] * (1 + damping) + 1e-6;
  if (closing !== undefined) tieHold(closing, damped, size, step);
  return solveSymmetric(damped, [step], moveSize, size);
}

function settle(
  data: FitData,
  guess: Move,
  up: MoveShape,
  down: MoveShape,
  worthwhile: Worthwhile,
): Settled | undefined {
  const { timesS } = data;
  if (timesS.length < moveSize + 2) return undefined;
  const leastS = Math.max(0.06, 3 * (timesS[1] - timesS[0]));
  let p = parametersOf(guess);
  orderTimes(p, leastS);
  const room = roomOf(timesS.length);
  const { normal } = room;
  let { best, tried } = room;
  tryMove(p, data, up, down, best);
  let isCurrent = false;
  let damping = 1e-2;
  const damped = new Float64Array(size * size);
  const step = new Float64Array(size);
  for (let round = 0; round < rounds; round++) {
    if (!isCurrent) assemble(p, data, up, down, best, normal);
    isCurrent = true;
    if (!solveDamped(normal, damping, damped, step)) return undefined;
    if (p[1] + step[1] > p[2] + step[2] && !solveDamped(normal, damping, damped, step, p)) return undefined;
    const next = p.map((value, a) => value + step[a]);
    orderTimes(next, leastS);
    tryMove(next, data, up, down, tried);
    if (tried.cost < best.cost) {
      const gained = best.cost - tried.cost;
      p = next;
      [best, tried] = [tried, best];
      isCurrent = false;
      damping = Math.max(1e-6, damping / 8);
      if (gained < worthwhile.gain + worthwhile.share * best.cost) break;
    } else {
      damping *= 6;
      if (damping > 1e4) break;
    }
  }
  return { p, best, normal, isCurrent };
}

/**
 * How well a smooth up-hold-down fits at its best, without its times and uncertainties.
 *
 * @param data - samples of the stretch and how to whiten them [s, m]
 * @param guess - where to begin [s, m]
 * @param up - shape of the way up [-]
 * @param down - shape of the way down [-]
 * @returns the misfits of {@link fitMove}, or undefined when it does not settle [-]
 *
 * Source: as {@link fitMove}
 */
export function misfitOfMove(
  data: FitData,
  guess: Move,
  up: MoveShape,
  down: MoveShape,
): Pick<MoveFit, 'upMisfit' | 'downMisfit'> | undefined {
  const settled = settle(data, guess, up, down, roughly);
  return settled && misfitsOf(settled.best);
}

function misfitsOf({ cost, upCost }: Tried): Pick<MoveFit, 'upMisfit' | 'downMisfit'> {
  return { upMisfit: upCost, downMisfit: cost - upCost };
}

/**
 * Times and levels of one repetition: the smooth up-hold-down that lies nearest to the signal, single wild samples
 * counting little, and departures that last counting as the one sway they are.
 *
 * @param data - samples of the stretch and how to whiten them [s, m]
 * @param guess - where to begin [s, m]
 * @param up - shape of the way up [-]
 * @param down - shape of the way down [-]
 * @returns the fit, or undefined when it does not settle [s, m]
 *
 * Source: Levenberg-Marquardt (Marquardt 1963, J Soc Ind Appl Math 11:431-441) on the soft-L1 loss (Triggs et al. 2000)
 */
export function fitMove(data: FitData, guess: Move, up: MoveShape, down: MoveShape): MoveFit | undefined {
  const settled = settle(data, guess, up, down, exactly);
  if (settled === undefined) return undefined;
  const { p, best, normal, isCurrent } = settled;
  if (!isCurrent) assemble(p, data, up, down, best, normal);
  return described(p, best, normal);
}

/** Sums of parameters whose uncertainty is wanted: start, both times of the top, end, level of the top. */
const wanted = [[0], [1, 2], [3], [5]] as const;

function described(p: Float64Array, tried: Tried, normal: ColumnProducts): MoveFit {
  const { departures, cost } = tried;
  let squares = 0;
  for (let i = 0; i < departures.length; i++) squares += departures[i] ** 2;
  const surprise = Math.sqrt(cost / departures.length);
  const matrix = normal.matrix.slice();
  for (let k = 0; k < moveSize; k++) matrix[k * size + k] = matrix[k * size + k] * (1 + 1e-9) + 1e-6;
  const covariances = new Float64Array(moveSize * wanted.length);
  wanted.forEach((sum, w) => {
    for (const k of sum) covariances[k * wanted.length + w] = 1;
  });
  const isPositive = solveSideBySide(matrix, covariances, moveSize, size);
  const [startU, topU, endU, levelU] = wanted.map((sum, w) => {
    const variance = isPositive ? sum.reduce<number>((all, k) => all + covariances[k * wanted.length + w], 0) : 0;
    return Math.sqrt(Math.max(0, variance)) * Math.max(1, surprise);
  });
  // field by field: spread, it would be a table of names seven times as large
  const { startS, highFromS, highToS, endS, before, top, after } = moveOf(p);
  const { upMisfit, downMisfit } = misfitsOf(tried);
  return {
    startS,
    highFromS,
    highToS,
    endS,
    before,
    top,
    after,
    upMisfit,
    downMisfit,
    residualSd: Math.sqrt(squares / departures.length),
    surprise,
    startU,
    topU: topU / 2,
    endU,
    levelU,
  };
}
