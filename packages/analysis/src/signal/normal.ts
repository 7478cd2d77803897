import { requireRange } from '../check.ts';

const LOG_ROOT_TWO_PI = 0.9189385332046728;

/**
 * Probability that a standard normal variable lies below a value.
 *
 * @param z - any finite value [-]
 * @returns probability, 0 to 1, to about 1e-15 of itself down to z = -37 [-]
 * @throws {@link InputError} `out-of-range` when z is not finite
 *
 * Source: Marsaglia (2004), Evaluating the normal distribution, J Stat Softw 11(4); tails by Laplace's continued fraction (Abramowitz & Stegun 1964, 26.2.14)
 * Checked against: fixtures/reference/normal.*.json
 */
export function normalCdf(z: number): number {
  requireRange(z, Number.isFinite(z), 'z', 'a finite number');
  if (z > 3) return 1 - normalCdf(-z);
  if (z < -3) {
    // 1/(t + 1/(t + 2/(t + 3/(t + ...)))), evaluated from the inside; 120 terms are enough from t = 3 on
    const t = -z;
    let fraction = t;
    for (let k = 120; k >= 1; k--) fraction = t + k / fraction;
    return Math.exp(-0.5 * t * t - LOG_ROOT_TWO_PI) / fraction;
  }
  // Phi(z) = 1/2 + phi(z) (z + z^3/3 + z^5/(3 5) + z^7/(3 5 7) + ...)
  let term = z;
  let sum = z;
  for (let k = 3; Math.abs(term) > 1e-17 * Math.abs(sum); k += 2) {
    term *= (z * z) / k;
    sum += term;
  }
  return 0.5 + sum * Math.exp(-0.5 * z * z - LOG_ROOT_TWO_PI);
}

/**
 * Value below which a standard normal variable lies with a given probability; the inverse of {@link normalCdf}.
 *
 * @param probability - above 0 and below 1 [-]
 * @returns the quantile [-]
 * @throws {@link InputError} `out-of-range` when the probability is not between 0 and 1
 *
 * Source: start from Abramowitz & Stegun (1964), 26.2.23, then Halley steps on {@link normalCdf}
 * Checked against: fixtures/reference/normal.*.json
 */
export function normalQuantile(probability: number): number {
  requireRange(probability, probability > 0 && probability < 1, 'probability', '0 < p < 1');
  if (probability > 0.5) return -normalQuantile(1 - probability);
  const t = Math.sqrt(-2 * Math.log(probability));
  const above = 2.515517 + t * (0.802853 + t * 0.010328);
  const below = 1 + t * (1.432788 + t * (0.189269 + t * 0.001308));
  let z = above / below - t;
  for (let step = 0; step < 3; step++) {
    // f/f' with f = Phi(z) - p, and f''/f' = -z
    const newton = (normalCdf(z) - probability) / Math.exp(-0.5 * z * z - LOG_ROOT_TWO_PI);
    z -= newton / (1 + (z * newton) / 2);
  }
  return z;
}
