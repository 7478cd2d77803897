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

export interface MoveFit extends Move {
  /** robust misfit of the way up and of the way down, each per sample, in squared noise units [-] */
  readonly upMisfit: number;
  readonly downMisfit: number;
  /** standard deviation of what the fit leaves over [m] */
  readonly residualSd: number;
  /** standard uncertainties from the curvature of the fit, allowing for residuals that resemble their neighbours */
  readonly startU: number;
  readonly topU: number;
  readonly endU: number;
  readonly levelU: number;
}

const size = 7;

/** Greatest number of Gauss-Newton rounds; most fits need 5 to 10. */
const rounds = 30;

interface Normal {
  readonly matrix: Float64Array;
  readonly gradient: Float64Array;
  cost: number;
}

/** Model and its derivatives at one instant; parameters: start, high from, high to, end, before, top, after. */
function model(p: Float64Array, t: number, up: MoveShape, down: MoveShape, d: Float64Array): number {
  d.fill(0);
  if (t <= p[0]) {
    d[4] = 1;
    return p[4];
  }
  if (t < p[1]) {
    const length = p[1] - p[0];
    const u = (t - p[0]) / length;
    const way = readShape(up.way, u);
    const pull = ((p[5] - p[4]) * readShape(up.speed, u)) / length;
    d[0] = pull * (u - 1);
    d[1] = -pull * u;
    d[4] = 1 - way;
    d[5] = way;
    return p[4] + (p[5] - p[4]) * way;
  }
  if (t <= p[2]) {
    d[5] = 1;
    return p[5];
  }
  if (t < p[3]) {
    const length = p[3] - p[2];
    const u = (t - p[2]) / length;
    const way = readShape(down.way, u);
    const pull = ((p[6] - p[5]) * readShape(down.speed, u)) / length;
    d[2] = pull * (u - 1);
    d[3] = -pull * u;
    d[5] = 1 - way;
    d[6] = way;
    return p[5] + (p[6] - p[5]) * way;
  }
  d[6] = 1;
  return p[6];
}

/** Solves the symmetric positive system in place by Cholesky; false when it is not positive. */
function solve(matrix: Float64Array, right: Float64Array): boolean {
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * size + j];
      for (let k = 0; k < j; k++) sum -= matrix[i * size + k] * matrix[j * size + k];
      if (i === j) {
        if (!(sum > 0)) return false;
        matrix[i * size + i] = Math.sqrt(sum);
      } else matrix[i * size + j] = sum / matrix[j * size + j];
    }
  }
  for (let i = 0; i < size; i++) {
    let sum = right[i];
    for (let k = 0; k < i; k++) sum -= matrix[i * size + k] * right[k];
    right[i] = sum / matrix[i * size + i];
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = right[i];
    for (let k = i + 1; k < size; k++) sum -= matrix[k * size + i] * right[k];
    right[i] = sum / matrix[i * size + i];
  }
  return true;
}

/** Keeps the four times in order, each way at least `leastS` long. */
function ordered(p: Float64Array, leastS: number): void {
  if (p[2] < p[1]) {
    const middle = (p[1] + p[2]) / 2;
    p[1] = middle;
    p[2] = middle;
  }
  p[0] = Math.min(p[0], p[1] - leastS);
  p[3] = Math.max(p[3], p[2] + leastS);
}

/**
 * Times and levels of one repetition: the smooth up-hold-down that lies nearest to the signal, single wild samples
 * counting little.
 *
 * @param timesS - sample times of the stretch, rising [s]
 * @param level - signal at those times [m]
 * @param guess - where to begin [s, m]
 * @param up - shape of the way up [-]
 * @param down - shape of the way down [-]
 * @param noise - usual departure of a sample from a smooth move, > 0 [m]
 * @returns the fit, or undefined when it does not settle [s, m]
 *
 * Source: Levenberg-Marquardt (Marquardt 1963, J Soc Ind Appl Math 11:431-441) on the soft-L1 loss (Triggs et al. 2000)
 */
export function fitMove(
  timesS: Float64Array,
  level: Float64Array,
  guess: Move,
  up: MoveShape,
  down: MoveShape,
  noise: number,
): MoveFit | undefined {
  const count = timesS.length;
  if (count < size + 2) return undefined;
  const d = new Float64Array(size);
  const leastS = Math.max(0.06, 3 * (timesS[1] - timesS[0]));
  let p = Float64Array.of(
    guess.startS,
    guess.highFromS,
    guess.highToS,
    guess.endS,
    guess.before,
    guess.top,
    guess.after,
  );
  ordered(p, leastS);
  // A level that no sample in the stretch speaks for stays at its guess, held by a weak spring.
  const anchor = Float64Array.from(p);
  const spring = [4, 5, 6].map(() => 0.05 / (noise * noise));
  const assemble = (q: Float64Array): Normal => {
    const matrix = new Float64Array(size * size);
    const gradient = new Float64Array(size);
    let cost = 0;
    for (let i = 0; i < count; i++) {
      const residual = (level[i] - model(q, timesS[i], up, down, d)) / noise;
      const square = residual * residual;
      const root = Math.sqrt(1 + square / 9); // soft-L1 that turns over at three noise units
      cost += 18 * (root - 1);
      const weight = 1 / (root * noise * noise);
      for (let a = 0; a < size; a++) {
        if (d[a] === 0) continue;
        gradient[a] = gradient[a] + weight * d[a] * residual * noise;
        for (let b = 0; b <= a; b++) matrix[a * size + b] = matrix[a * size + b] + weight * d[a] * d[b];
      }
    }
    for (let a = 4; a < size; a++) {
      const pull = anchor[a] - q[a];
      cost += spring[a - 4] * pull * pull;
      gradient[a] = gradient[a] + spring[a - 4] * pull;
      matrix[a * size + a] = matrix[a * size + a] + spring[a - 4];
    }
    return { matrix, gradient, cost };
  };
  let normal = assemble(p);
  let damping = 1e-2;
  for (let round = 0; round < rounds; round++) {
    const damped = Float64Array.from(normal.matrix);
    for (let a = 0; a < size; a++) damped[a * size + a] = damped[a * size + a] * (1 + damping) + 1e-9;
    const step = Float64Array.from(normal.gradient);
    if (!solve(damped, step)) return undefined;
    const next = p.map((value, a) => value + step[a]);
    ordered(next, leastS);
    const tried = assemble(next);
    if (tried.cost < normal.cost) {
      const gained = normal.cost - tried.cost;
      p = next;
      const small = gained < 1e-3 + 1e-4 * tried.cost;
      normal = tried;
      damping = Math.max(1e-6, damping / 6);
      if (small) break;
    } else {
      damping *= 5;
      if (damping > 1e5) break;
    }
  }
  return described(p, timesS, level, up, down, noise, normal);
}

function described(
  p: Float64Array,
  timesS: Float64Array,
  level: Float64Array,
  up: MoveShape,
  down: MoveShape,
  noise: number,
  normal: Normal,
): MoveFit {
  const d = new Float64Array(size);
  const middle = (p[1] + p[2]) / 2;
  let upCost = 0;
  let downCost = 0;
  let squares = 0;
  let product = 0;
  let last = 0;
  for (let i = 0; i < timesS.length; i++) {
    const residual = level[i] - model(p, timesS[i], up, down, d);
    const held = Math.max(-4 * noise, Math.min(4 * noise, residual));
    const cost = 18 * (Math.sqrt(1 + (residual / noise) ** 2 / 9) - 1);
    if (timesS[i] < middle) upCost += cost;
    else downCost += cost;
    squares += held * held;
    product += held * last;
    last = held;
  }
  // Residuals of neighbours resemble each other: n of them count as n (1 - r) / (1 + r) independent ones.
  const alike = squares > 0 ? Math.min(0.98, Math.max(0, product / squares)) : 0;
  const residualSd = Math.sqrt(squares / timesS.length);
  const inflation = ((1 + alike) / (1 - alike)) * Math.max(0.1, residualSd / noise) ** 2;
  const variance = (a: number, b: number): number => {
    const matrix = Float64Array.from(normal.matrix);
    for (let k = 0; k < size; k++) matrix[k * size + k] = matrix[k * size + k] + 1e-6;
    const right = new Float64Array(size);
    right[a] = 1;
    if (b !== a) right[b] = 1;
    const unitVector = Float64Array.from(right);
    if (!solve(matrix, right)) return 0;
    let sum = 0;
    for (let k = 0; k < size; k++) sum += unitVector[k] * right[k];
    return Math.max(0, sum) * inflation;
  };
  return {
    startS: p[0],
    highFromS: p[1],
    highToS: p[2],
    endS: p[3],
    before: p[4],
    top: p[5],
    after: p[6],
    upMisfit: upCost,
    downMisfit: downCost,
    residualSd,
    startU: Math.sqrt(variance(0, 0)),
    topU: Math.sqrt(variance(1, 2)) / 2,
    endU: Math.sqrt(variance(3, 3)),
    levelU: Math.sqrt(variance(5, 5)),
  };
}
