/**
 * Bounds that the number of successes of independent trials keeps with a given probability, each trial with its own
 * chance.
 *
 * @param probabilities - chance of each trial, 0 to 1 [-]
 * @param coverage - probability that the number lies within, such as 0.95 [-]
 * @returns least and greatest number; equal tails [-]
 *
 * Source: Poisson-binomial distribution by convolution (Hong 2013, Comput Stat Data Anal 59:41-51)
 */
export function countBounds(probabilities: readonly number[], coverage: number): { low: number; high: number } {
  // Only the doubtful trials spread the number; the sure ones shift it.
  const sure = probabilities.filter((p) => p > 1 - 1e-9).length;
  const doubtful = probabilities.filter((p) => p > 1e-9 && p <= 1 - 1e-9);
  let chances = Float64Array.of(1);
  for (const p of doubtful) {
    const next = new Float64Array(chances.length + 1);
    for (let k = 0; k < chances.length; k++) {
      next[k] = next[k] + chances[k] * (1 - p);
      next[k + 1] = next[k + 1] + chances[k] * p;
    }
    chances = next;
  }
  const tail = (1 - coverage) / 2;
  let low = 0;
  let below = chances[0];
  while (below <= tail && low < doubtful.length) below += chances[++low];
  let high = doubtful.length;
  let above = chances[high];
  while (above <= tail && high > low) above += chances[--high];
  return { low: sure + low, high: sure + high };
}
