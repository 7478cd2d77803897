import { solveSymmetric } from '../raises/heel/linear-solve.ts';

/** Departures of a model at given parameters, in standard deviations; as many at any parameters. */
export type Departures = (parameters: Float64Array) => Float64Array;

/** A least-squares fit. */
export interface DampedFit {
  readonly parameters: Float64Array;
  /** half the sum of squared departures [-] */
  readonly cost: number;
  /** lower triangle of the curvature, row after row [1 / units of the parameters] */
  readonly curvature: Float64Array;
}

const rounds = 25;
const enough = 1e-2;

function halfSquares(departures: Float64Array): number {
  let sum = 0;
  for (const one of departures) sum += one * one;
  return sum / 2;
}

/** Curvature and downhill direction, by forward differences. */
function slopes(at: Float64Array, here: Float64Array, departures: Departures, steps: Float64Array) {
  const size = at.length;
  const columns = Array.from(at, (_, j) => {
    const moved = at.slice();
    moved[j] += steps[j];
    const there = departures(moved);
    const column = new Float64Array(here.length);
    for (let i = 0; i < here.length; i++) column[i] = (there[i] - here[i]) / steps[j];
    return column;
  });
  const curvature = new Float64Array(size * size);
  const downhill = new Float64Array(size);
  for (let j = 0; j < size; j++) {
    for (let i = 0; i < here.length; i++) downhill[j] -= columns[j][i] * here[i];
    for (let k = 0; k <= j; k++) {
      let sum = 0;
      for (let i = 0; i < here.length; i++) sum += columns[j][i] * columns[k][i];
      curvature[j * size + k] = sum;
    }
  }
  return { curvature, downhill };
}

/**
 * Parameters with the least sum of squared departures near a first guess: damped least squares, derivatives by differences.
 *
 * @param first - where to begin [any unit]
 * @param steps - small change of each parameter for its derivative, > 0 [units of first]
 * @param departures - of data and expectations, in standard deviations; finite [-]
 * @returns the fit; null when the curvature is not positive [units of first]
 *
 * Source: Marquardt (1963), J Soc Ind Appl Math 11:431-441
 */
export function dampedFit(first: Float64Array, steps: Float64Array, departures: Departures): DampedFit | null {
  const size = first.length;
  let parameters = first;
  let here = departures(parameters);
  let cost = halfSquares(here);
  let damping = 1e-3;
  let { curvature, downhill } = slopes(parameters, here, departures, steps);
  for (let round = 0; round < rounds; round++) {
    const matrix = curvature.slice();
    for (let j = 0; j < size; j++) matrix[j * size + j] *= 1 + damping;
    const step = downhill.slice();
    if (!solveSymmetric(matrix, [step], size)) return null;
    const next = parameters.map((value, j) => value + step[j]);
    const there = departures(next);
    const nextCost = halfSquares(there);
    if (nextCost < cost) {
      const gain = cost - nextCost;
      [parameters, here, cost] = [next, there, nextCost];
      damping = Math.max(1e-9, damping / 8);
      ({ curvature, downhill } = slopes(parameters, here, departures, steps));
      if (gain < enough) break;
    } else {
      damping *= 6;
      if (damping > 1e8) break;
    }
  }
  return { parameters, cost, curvature };
}
