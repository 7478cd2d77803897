import { normalCdf } from '../../signal/normal.ts';

const LOW = -6;
const HIGH = 5;
const STEPS_PER_UNIT = 64;

/** log of the distribution function on a regular grid: it is asked for millions of times */
const table = Float64Array.from({ length: (HIGH - LOW) * STEPS_PER_UNIT + 2 }, (_, i) =>
  Math.log(normalCdf(LOW + i / STEPS_PER_UNIT)),
);

/**
 * Logarithm of the standard normal distribution function.
 *
 * Interpolated linearly from a table to within 1e-4; below -6 by the asymptotic series, above 5 zero.
 *
 * @param z - standardised value [-]
 * @returns log of the probability of a smaller value [nat]
 *
 * Source: Abramowitz and Stegun (1964), Handbook of Mathematical Functions, 26.2.12 for the tail
 */
export function logNormalCdf(z: number): number {
  if (z >= HIGH) return 0;
  if (z < LOW) {
    const square = z * z;
    return -0.5 * square - Math.log(-z) - 0.9189385332046727 + Math.log1p(-1 / square + 3 / (square * square));
  }
  const at = (z - LOW) * STEPS_PER_UNIT;
  const index = Math.floor(at);
  return table[index] + (at - index) * (table[index + 1] - table[index]);
}
