import { requireRange } from '../check.ts';
import { normalCdf } from '../signal/normal.ts';

/** Places and weights of eight points between -1 and 1, each for both signs: Abramowitz & Stegun (1964), table 25.4. */
const POINTS = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
] as const;

/** The spread of s is about 1 / root (2 df): beyond so many of it the density is below 1e-14 of its top. */
const REACH = 9.5;
const PANELS = 40;

/**
 * Probability that a noncentral t lies below a value.
 *
 * With s the root of chi-square over its degrees of freedom, it is the mean of Phi(t s - shift) over the density of s. The density is
 * not scaled beforehand: the same points give its own integral, so that no gamma function is needed.
 *
 * @param value - t, finite [-]
 * @param df - degrees of freedom, at least 1 [-]
 * @param shift - noncentrality: the true difference in standard errors, finite [-]
 * @returns probability, 0 to 1, to about 1e-10 [-]
 * @throws {@link InputError} `out-of-range` for an argument
 *
 * Source: definition of the noncentral t; integral by Gauss and Legendre
 * Checked against: fixtures/reference/design.noncentral-t.json
 */
export function noncentralTCdf(value: number, df: number, shift: number): number {
  requireRange(value, true, 'value', 'a finite number');
  requireRange(df, df >= 1, 'df', 'at least 1 degree of freedom');
  requireRange(shift, true, 'shift', 'a finite number');
  const spread = 1 / Math.sqrt(2 * df);
  const low = Math.max(0, 1 - REACH * spread);
  const half = (1 + REACH * spread - low) / (2 * PANELS);
  let below = 0;
  let whole = 0;
  for (let panel = 0; panel < PANELS; panel++) {
    const middle = low + half * (2 * panel + 1);
    for (const [place, weight] of POINTS) {
      for (const s of [middle - half * place, middle + half * place]) {
        const density = weight * Math.exp((df - 1) * Math.log(s) - (df * (s * s - 1)) / 2);
        whole += density;
        below += density * normalCdf(value * s - shift);
      }
    }
  }
  return Math.min(1, Math.max(0, below / whole));
}
