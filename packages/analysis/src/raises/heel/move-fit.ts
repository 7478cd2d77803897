import { innovations, softMisfit, softRoot } from './innovations.ts';
import { solveSymmetric } from './linear-solve.ts';
import { type Move, moveLevel, moveOf, moveSize, orderTimes, parametersOf } from './move-model.ts';
import type { MoveShape } from './move-shape.ts';
import { addPartsPrior, type PartsPrior } from './parts-prior.ts';
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

const size = moveSize;

/** Greatest number of Gauss-Newton rounds; most fits need 5 to 10. */
const rounds = 25;

interface Normal {
  readonly matrix: Float64Array;
  readonly gradient: Float64Array;
  cost: number;
  upCost: number;
}

/** Cost, gradient and curvature of the robust misfit at one set of parameters. */
function assemble(q: Float64Array, data: FitData, up: MoveShape, down: MoveShape, normal: Normal): void {
  const { timesS, level, whitening } = data;
  const { matrix, gradient } = normal;
  const d = new Float64Array(size);
  const { white, take } = innovations(whitening, size);
  const middle = (q[1] + q[2]) / 2;
  matrix.fill(0);
  gradient.fill(0);
  normal.cost = 0;
  normal.upCost = 0;
  for (let i = 0; i < timesS.length; i++) {
    const departure = level[i] - moveLevel(q, timesS[i], up, down, d);
    const x = take(i, departure, d, size);
    const root = softRoot(x * x);
    const cost = softMisfit(root);
    normal.cost += cost;
    if (timesS[i] < middle) normal.upCost += cost;
    const weight = 1 / root;
    for (let a = 0; a < size; a++) {
      const wa = weight * white[a];
      gradient[a] = gradient[a] + wa * x;
      for (let b = 0; b <= a; b++) matrix[a * size + b] = matrix[a * size + b] + wa * white[b];
    }
  }
  if (data.parts !== undefined) {
    const cost = addPartsPrior(data.parts, q, size, normal);
    normal.cost += cost;
    normal.upCost += cost / 2;
  }
}

function emptyNormal(): Normal {
  return { matrix: new Float64Array(size * size), gradient: new Float64Array(size), cost: 0, upCost: 0 };
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
  const { timesS } = data;
  if (timesS.length < size + 2) return undefined;
  const leastS = Math.max(0.06, 3 * (timesS[1] - timesS[0]));
  let p = parametersOf(guess);
  orderTimes(p, leastS);
  let normal = emptyNormal();
  let tried = emptyNormal();
  assemble(p, data, up, down, normal);
  let damping = 1e-2;
  const damped = new Float64Array(size * size);
  const step = new Float64Array(size);
  for (let round = 0; round < rounds; round++) {
    damped.set(normal.matrix);
    step.set(normal.gradient);
    for (let a = 0; a < size; a++) damped[a * size + a] = damped[a * size + a] * (1 + damping) + 1e-6;
    if (!solveSymmetric(damped, [step], size)) return undefined;
    const next = p.map((value, a) => value + step[a]);
    orderTimes(next, leastS);
    assemble(next, data, up, down, tried);
    if (tried.cost < normal.cost) {
      const gained = normal.cost - tried.cost;
      p = next;
      [normal, tried] = [tried, normal];
      damping = Math.max(1e-6, damping / 8);
      if (gained < 1e-3 + 1e-4 * normal.cost) break;
    } else {
      damping *= 6;
      if (damping > 1e4) break;
    }
  }
  return described(p, data, up, down, normal);
}

function described(p: Float64Array, data: FitData, up: MoveShape, down: MoveShape, normal: Normal): MoveFit {
  const { timesS, level } = data;
  const d = new Float64Array(size);
  let squares = 0;
  for (let i = 0; i < timesS.length; i++) squares += (level[i] - moveLevel(p, timesS[i], up, down, d)) ** 2;
  const surprise = Math.sqrt(normal.cost / timesS.length);
  const deviation = (a: number, b: number): number => {
    const matrix = Float64Array.from(normal.matrix);
    for (let k = 0; k < size; k++) matrix[k * size + k] = matrix[k * size + k] * (1 + 1e-9) + 1e-6;
    const wanted = new Float64Array(size);
    wanted[a] = 1;
    wanted[b] = 1;
    const right = Float64Array.from(wanted);
    if (!solveSymmetric(matrix, [right], size)) return 0;
    let sum = 0;
    for (let k = 0; k < size; k++) sum += wanted[k] * right[k];
    return Math.sqrt(Math.max(0, sum)) * Math.max(1, surprise);
  };
  return {
    ...moveOf(p),
    upMisfit: normal.upCost,
    downMisfit: normal.cost - normal.upCost,
    residualSd: Math.sqrt(squares / timesS.length),
    surprise,
    startU: deviation(0, 0),
    topU: deviation(1, 2) / 2,
    endU: deviation(3, 3),
    levelU: deviation(5, 5),
  };
}
