import { median } from '../../signal/order-statistics.ts';
import { softMisfit, softRoot } from './innovations.ts';
import { solveSymmetric } from './linear-solve.ts';

/** How long the parts of a repetition last in this set, and how far a single one departs from that. */
export interface PartsPrior {
  /** way up, hold and way down [s] */
  readonly usualS: readonly number[];
  /** inverse of their covariance, row after row [1/s2] */
  readonly precision: Float64Array;
}

/** Number of parts. */
export const partCount = 3;

/** How far the parts of one person spread. */
export interface PartsRule {
  /** all three together, and each apart from that [-] */
  readonly commonSpread: number;
  readonly ownSpread: number;
  /** every part may depart by as much, however short [s] */
  readonly leastOwnS: number;
}

/**
 * Usual length of each part: the median over the repetitions.
 *
 * @param moves - start, high from, high to and end of each repetition first among their parameters [s]
 * @returns way up, hold and way down [s]
 *
 * Source: definition
 */
export function usualParts(moves: readonly ArrayLike<number>[]): Float64Array {
  return Float64Array.from({ length: partCount }, (_, k) => median(moves.map((p) => p[k + 1] - p[k])));
}

/**
 * The habit of a set: how long its ways and holds last. They grow and shrink together with the tempo, and little apart.
 *
 * @param usualS - way up, hold and way down as they usually are [s]
 * @param rule - how far they spread, see {@link PartsRule} [s, -]
 * @returns the habit [s]
 *
 * Source: ours (empirical Bayes)
 */
export function partsPrior(usualS: ArrayLike<number>, rule: PartsRule): PartsPrior {
  const { commonSpread, ownSpread, leastOwnS } = rule;
  const covariance = new Float64Array(partCount * partCount);
  for (let a = 0; a < partCount; a++) {
    for (let b = 0; b < partCount; b++) covariance[partCount * a + b] = commonSpread ** 2 * usualS[a] * usualS[b];
    const own = (ownSpread * usualS[a]) ** 2 + leastOwnS ** 2;
    covariance[(partCount + 1) * a] = covariance[(partCount + 1) * a] + own;
  }
  const columns = [0, 1, 2].map((k) => Float64Array.from({ length: partCount }, (_, i) => (i === k ? 1 : 0)));
  solveSymmetric(covariance, columns, partCount);
  const precision = Float64Array.from(
    { length: partCount * partCount },
    (_, i) => columns[i % partCount][Math.floor(i / partCount)],
  );
  return { usualS: Array.from(usualS), precision };
}

/** Where the misfit with a habit is added up; the lower triangles are used. */
export interface PartsNormal {
  /** normal matrix and right-hand side of the repetition [1/s2], [1/s] */
  readonly matrix: Float64Array;
  readonly gradient: Float64Array;
  /** the same of the usual parts, from their first place on in matrices of several shared parameters */
  readonly shared?: {
    readonly first: number;
    readonly size: number;
    readonly matrix: Float64Array;
    readonly gradient: Float64Array;
    /** repetition by row, shared parameters by column */
    readonly coupling: Float64Array;
    /** where the first row begins, and how long a row is, where that is not the number of shared parameters */
    readonly couplingAt?: number;
    readonly couplingSize?: number;
  };
}

/** What a habit says to the parts of one repetition. */
interface Pull {
  /** how far each part is from usual, weighted by the precision [1/s] */
  readonly pull: readonly [number, number, number];
  readonly root: number;
}

function pullOf({ usualS, precision }: PartsPrior, p: Float64Array): Pull {
  const up = usualS[0] - (p[1] - p[0]);
  const hold = usualS[1] - (p[2] - p[1]);
  const down = usualS[2] - (p[3] - p[2]);
  const along = (row: number): number =>
    precision[partCount * row] * up + precision[partCount * row + 1] * hold + precision[partCount * row + 2] * down;
  const pull = [along(0), along(1), along(2)] as const;
  return { pull, root: softRoot(up * pull[0] + hold * pull[1] + down * pull[2]) };
}

/**
 * Misfit of one repetition with the habit of its set.
 *
 * @param prior - habit of the set [s]
 * @param p - parameters of the repetition: start, high from, high to, end first [s]
 * @returns -2 log-likelihood up to a constant, single wild repetitions counting little [-]
 *
 * Source: ours
 */
export function partsMisfit(prior: PartsPrior, p: Float64Array): number {
  return softMisfit(pullOf(prior, p).root);
}

/**
 * Misfit of one repetition with the habit of its set; adds its share to the normal equations.
 *
 * @param prior - habit of the set [s]
 * @param p - parameters of the repetition: start, high from, high to, end first [s]
 * @param size - number of parameters [-]
 * @param normal - is added to, see {@link PartsNormal} [1/s2, 1/s]
 * @returns -2 log-likelihood up to a constant, single wild repetitions counting little [-]
 *
 * Source: ours
 */
export function addPartsPrior(prior: PartsPrior, p: Float64Array, size: number, normal: PartsNormal): number {
  const { precision } = prior;
  const { matrix, gradient, shared } = normal;
  const { pull, root } = pullOf(prior, p);
  const at = (a: number, b: number): number =>
    (a < 0 || b < 0 || a >= partCount || b >= partCount ? 0 : precision[partCount * a + b]) / root;
  // part k is the difference of the times k + 1 and k
  for (let a = 0; a <= partCount; a++) {
    gradient[a] = gradient[a] + ((pull[a - 1] ?? 0) - (pull[a] ?? 0)) / root;
    for (let b = 0; b <= a; b++) {
      matrix[a * size + b] = matrix[a * size + b] + at(a - 1, b - 1) - at(a - 1, b) - at(a, b - 1) + at(a, b);
    }
  }
  if (shared !== undefined) {
    const { first, couplingAt = 0, couplingSize = shared.size } = shared;
    for (let a = 0; a < partCount; a++) {
      const row = first + a;
      shared.gradient[row] = shared.gradient[row] - pull[a] / root;
      for (let b = 0; b <= a; b++) {
        shared.matrix[row * shared.size + first + b] = shared.matrix[row * shared.size + first + b] + at(a, b);
      }
      for (let m = 0; m <= partCount; m++) {
        const place = couplingAt + m * couplingSize + row;
        shared.coupling[place] = shared.coupling[place] - at(m - 1, a) + at(m, a);
      }
    }
  }
  return softMisfit(root);
}
