/** Parameters of one shape: logarithm of start, of end, spread and tilt. */
export const shapeSize = 4;

type OfShape = readonly [start: number, end: number, spread: number, tilt: number];

/** How the ways of people differ; logarithm of either exponent, spread, tilt [-]. */
export interface ShapeRule {
  /** how far they usually lie from minimum jerk */
  readonly usualSd: OfShape;
  /** how far the way down lies from the way up backwards, in the order of the way up */
  readonly mirroredSd: OfShape;
}

/** Where minimum jerk lies. */
export const origin = [Math.log(2), Math.log(2), 0, 0] as const;

/** The way down is about the way up backwards: which parameters answer each other, and whether with the sign turned; ours. */
const mirrored = [
  { rising: 1, falling: 0, sign: 1 },
  { rising: 0, falling: 1, sign: 1 },
  { rising: 2, falling: 2, sign: 1 },
  { rising: 3, falling: 3, sign: -1 },
] as const;

/**
 * Misfit of the shapes of one person with those of people: near minimum jerk, and the way down near the way up backwards.
 * Adds its share to the normal equations.
 *
 * @param shared - parameters of the way up, then of the way down, first of all [-]
 * @param size - number of shared parameters [-]
 * @param matrix - normal matrix, row after row; the lower triangle is added to [-]
 * @param gradient - right-hand side; is added to [-]
 * @param rule - how the ways of people differ, see {@link ShapeRule} [-]
 * @returns -2 log-likelihood up to a constant [-]
 *
 * Source: ours
 */
export function addShapePrior(
  shared: Float64Array,
  size: number,
  matrix: Float64Array,
  gradient: Float64Array,
  { usualSd, mirroredSd }: ShapeRule,
): number {
  let cost = 0;
  const add = (precision: number, apart: number, first: number, second: number | undefined, sign: number): void => {
    cost += precision * apart * apart;
    gradient[first] = gradient[first] - precision * apart;
    matrix[first * size + first] = matrix[first * size + first] + precision;
    if (second === undefined) return;
    gradient[second] = gradient[second] + sign * precision * apart;
    matrix[second * size + second] = matrix[second * size + second] + precision;
    matrix[second * size + first] = matrix[second * size + first] - sign * precision;
  };
  for (let a = 0; a < 2 * shapeSize; a++) {
    add(1 / usualSd[a % shapeSize] ** 2, shared[a] - origin[a % shapeSize], a, undefined, 1);
  }
  // Who nears the top slowly leaves it slowly, and the same holds at the bottom: else sway would shift the top to one side.
  for (const { rising, falling, sign } of mirrored) {
    const sd = mirroredSd[rising];
    const second = shapeSize + falling;
    add(1 / (sd * sd), shared[rising] - sign * shared[second], rising, second, sign);
  }
  return cost;
}
