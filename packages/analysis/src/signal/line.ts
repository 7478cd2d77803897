import { SLR } from 'ml-regression';
import { requireCount, requireFinite, requireRange, requireSameLength } from '../check.ts';
import { normalQuantile } from './normal.ts';
import { median } from './order-statistics.ts';

/** A straight line y = intercept + slope x. */
export interface Line {
  readonly slope: number;
  readonly intercept: number;
}

/** A Theil-Sen line with the 95 % interval of its slope. */
export interface RobustLine extends Line {
  readonly slopeLow: number;
  readonly slopeHigh: number;
}

/** A least-squares line with the standard uncertainties that its own residuals give it. */
export interface FittedLine extends Line {
  /** standard deviation of the residuals, over n - 2; undefined for two points */
  readonly residualSd: number | undefined;
  /** standard uncertainty of the slope; undefined for two points */
  readonly slopeU: number | undefined;
  /** standard uncertainty of the intercept; undefined for two points */
  readonly interceptU: number | undefined;
}

function requirePoints(x: ArrayLike<number>, y: ArrayLike<number>): void {
  requireCount(x, 2, 'x');
  requireSameLength(x, y, 'y');
  requireFinite(x, 'x');
  requireFinite(y, 'y');
  for (let i = 1; i < x.length; i++) if (x[i] !== x[0]) return;
  requireRange(x[0], false, 'x', 'at least two different values');
}

/** Sum over groups of equal values of k (k - 1) (2 k + 5), the tie term of the variance of Kendall's statistic. */
function tieTerm(values: ArrayLike<number>): number {
  const groups = new Map<number, number>();
  for (let i = 0; i < values.length; i++) groups.set(values[i], (groups.get(values[i]) ?? 0) + 1);
  let sum = 0;
  for (const k of groups.values()) sum += k * (k - 1) * (2 * k + 5);
  return sum;
}

function pairSlopes(x: ArrayLike<number>, y: ArrayLike<number>): Float64Array {
  const slopes: number[] = [];
  for (let i = 0; i < x.length; i++) {
    for (let j = i + 1; j < x.length; j++) if (x[i] !== x[j]) slopes.push((y[j] - y[i]) / (x[j] - x[i]));
  }
  return new Float64Array(slopes).sort();
}

/**
 * Line through the medians: slope = median of the slopes of all pairs, intercept = median of y - slope x, with the 95 %
 * interval of the slope from the ranks of the pair slopes (normal approximation, ties allowed for). Cost grows with n^2.
 *
 * @param x - n >= 2 values, finite, not all equal [unit of x]
 * @param y - as many values, finite [unit of y]
 * @returns slope with interval, and intercept [unit of y per unit of x, unit of y]
 * @throws {@link InputError} `too-short` when n < 2; `length-mismatch`; `not-finite`; `out-of-range` when all x are equal
 *
 * Source: Sen (1968), J Am Stat Assoc 63:1379-1389; Hollander, Wolfe & Chicken (2014), Nonparametric Statistical Methods, 3rd ed., 9.1-9.3
 * Checked against: fixtures/reference/line.*.json
 */
export function theilSen(x: ArrayLike<number>, y: ArrayLike<number>): RobustLine {
  requirePoints(x, y);
  // ml-regression 6.3.0 takes the lower of the two middle slopes when the number of pairs is even (-0.0575 for -0.05625
  // in Hollander, Wolfe & Chicken 9.1), so its Theil-Sen line is not used
  const slopes = pairSlopes(x, y);
  const slope = median(slopes);
  const intercept = median(Float64Array.from(x, (value, i) => y[i] - slope * value));
  const n = x.length;
  // variance of Kendall's statistic with ties, Sen (1968) Eq. 2.6
  const variance = (n * (n - 1) * (2 * n + 5) - tieTerm(x) - tieTerm(y)) / 18;
  const reach = normalQuantile(0.975) * Math.sqrt(Math.max(0, variance));
  const lowRank = Math.max(Math.round((slopes.length - reach) / 2) - 1, 0);
  const highRank = Math.min(Math.round((slopes.length + reach) / 2), slopes.length - 1);
  return { slope, intercept, slopeLow: slopes[lowRank], slopeHigh: slopes[highRank] };
}

/**
 * Least-squares line, weighted where weights are given, with standard uncertainties from its residuals.
 *
 * @param x - n >= 2 values, finite, not all equal [unit of x]
 * @param y - as many values, finite [unit of y]
 * @param weights - as many weights, >= 0, at least two above 0 at different x; all equal when left out [-]
 * @returns slope and intercept with uncertainties [unit of y per unit of x, unit of y]
 * @throws {@link InputError} `too-short` when n < 2; `length-mismatch`; `not-finite`; `out-of-range` when all x are equal or for the weights
 *
 * Source: definition; certified values of NIST StRD Norris
 * Checked against: fixtures/reference/line.*.json
 */
export function leastSquaresLine(x: ArrayLike<number>, y: ArrayLike<number>, weights?: ArrayLike<number>): FittedLine {
  requirePoints(x, y);
  const n = x.length;
  if (weights !== undefined) {
    requireSameLength(x, weights, 'weights');
    for (let i = 0; i < n; i++) requireRange(weights[i], weights[i] >= 0, 'weights', '>= 0');
  }
  let weightSum = 0;
  let xMean = 0;
  let yMean = 0;
  for (let i = 0; i < n; i++) {
    const weight = weights?.[i] ?? 1;
    weightSum += weight;
    xMean += weight * x[i];
    yMean += weight * y[i];
  }
  requireRange(weightSum, weightSum > 0, 'weights', 'at least two above 0');
  xMean /= weightSum;
  yMean /= weightSum;
  // far from zero the sums of squares would lose digits: the line is found about the centre of the points
  const fromCentreX = Float64Array.from(x, (value) => value - xMean);
  const fromCentreY = Float64Array.from(y, (value) => value - yMean);
  let xx = 0;
  let xy = 0;
  for (let i = 0; i < n; i++) {
    const weight = weights?.[i] ?? 1;
    xx += weight * fromCentreX[i] ** 2;
    xy += weight * fromCentreX[i] * fromCentreY[i];
  }
  requireRange(xx, xx > 0, 'weights', 'at least two above 0 at different x');
  const slope = weights === undefined ? new SLR(fromCentreX, fromCentreY).slope : xy / xx;
  const intercept = yMean - slope * xMean;
  if (n === 2) return { slope, intercept, residualSd: undefined, slopeU: undefined, interceptU: undefined };
  let squares = 0;
  for (let i = 0; i < n; i++) squares += (weights?.[i] ?? 1) * (fromCentreY[i] - slope * fromCentreX[i]) ** 2;
  const residualSd = Math.sqrt(squares / (n - 2));
  const slopeU = residualSd / Math.sqrt(xx);
  const interceptU = residualSd * Math.sqrt(1 / weightSum + xMean ** 2 / xx);
  return { slope, intercept, residualSd, slopeU, interceptU };
}
