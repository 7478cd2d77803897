/** A session with what came of it: the load, and whether the morning after it was a flare. */
export interface Trial {
  readonly load: number;
  readonly isFlare: boolean;
}

/** log(1 + e^x), exact for large x. */
function softplus(x: number): number {
  return x > 0 ? x + Math.log1p(Math.exp(-x)) : Math.log1p(Math.exp(x));
}

/** Logarithm of the likelihood of a logistic line that passes one half at a load. */
function logLikelihood(trials: readonly Trial[], threshold: number, slope: number): number {
  let sum = 0;
  for (const { load, isFlare } of trials) {
    const x = slope * (load - threshold);
    sum -= softplus(isFlare ? -x : x);
  }
  return sum;
}

/**
 * The best likelihood of a rising logistic line that passes one half at a given load, over its slope.
 *
 * @param trials - sessions [any unit of load]
 * @param threshold - load at which a flare is as likely as none [unit of the load]
 * @param scale - spread of the loads: slopes go up to 100 over it [unit of the load]
 * @returns logarithm of the likelihood [-]
 *
 * Source: Cox 1958 J R Stat Soc B 20:215, the regression of a binary answer; concave in the slope, found by golden section
 */
export function profileAt(trials: readonly Trial[], threshold: number, scale: number): number {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [0, 100 / scale];
  let one = high - ratio * (high - low);
  let other = low + ratio * (high - low);
  let [ofOne, ofOther] = [logLikelihood(trials, threshold, one), logLikelihood(trials, threshold, other)];
  for (let i = 0; i < 30; i++) {
    if (ofOne > ofOther) {
      [high, other, ofOther] = [other, one, ofOne];
      one = high - ratio * (high - low);
      ofOne = logLikelihood(trials, threshold, one);
    } else {
      [low, one, ofOne] = [one, other, ofOther];
      other = low + ratio * (high - low);
      ofOther = logLikelihood(trials, threshold, other);
    }
  }
  return Math.max(ofOne, ofOther);
}

/**
 * The likelihood where load makes no difference.
 *
 * @param trials - sessions [-]
 * @returns logarithm of the likelihood [-]
 *
 * Source: a binomial of one share
 */
export function withoutLoad(trials: readonly Trial[]): number {
  const n = trials.length;
  const k = trials.filter(({ isFlare }) => isFlare).length;
  if (k === 0 || k === n) return 0;
  return k * Math.log(k / n) + (n - k) * Math.log(1 - k / n);
}
