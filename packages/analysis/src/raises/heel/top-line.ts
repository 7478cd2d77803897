/** A level at an instant. */
export interface Moment {
  readonly timeS: number;
  /** [m] */
  readonly level: number;
}

/** A lasting step of a level: the sensor was moved [s, m]. */
export interface LevelStep {
  readonly timeS: number;
  readonly stepM: number;
}

/** What the tops of a set are about their line. */
export interface TopRule {
  /** spreads of the heights about their line that are tried [m] */
  readonly spreadsM: readonly number[];
  /** tops that are far from the line, as half a raise is: their share, and how far they may be [-, m] */
  readonly strayShare: number;
  readonly strayReachM: number;
  /** fewer tops say nothing of a line [-] */
  readonly leastTops: number;
}

/** Rounds of weighting, enough to settle; ours. */
const rounds = 4;

/**
 * Log likelihood of tops about a straight line: heights fall slowly as the calf tires, single ones stray.
 *
 * @param tops - greatest levels of repetitions in time order [s, m]
 * @param step - lasting step of the level between them, taken off first; undefined for none [s, m]
 * @param rule - see {@link TopRule} [m, -]
 * @returns greatest over the spread; 0 where there are too few tops to say anything [log 1/m]
 *
 * Source: ours; line by iterated reweighting with Cauchy weights (Holland & Welsch 1977, Commun Stat A6:813-827)
 */
export function topsLikelihood(tops: readonly Moment[], step: LevelStep | undefined, rule: TopRule): number {
  if (tops.length < rule.leastTops) return 0;
  const timesS = Float64Array.from(tops, ({ timeS }) => timeS);
  const levels = Float64Array.from(tops, ({ timeS, level }) =>
    step !== undefined && timeS > step.timeS ? level - step.stepM : level,
  );
  return Math.max(...rule.spreadsM.map((spread) => logLikelihood(residualsOf(timesS, levels, spread), spread, rule)));
}

/**
 * What {@link topsLikelihood} comes to at most: all tops lie on their line.
 *
 * @param count - number of tops [-]
 * @param rule - see {@link TopRule} [m, -]
 * @returns greatest over the spread; 0 where there are too few tops to say anything [log 1/m]
 *
 * Source: definition
 */
export function greatestTopsLikelihood(count: number, rule: TopRule): number {
  if (count < rule.leastTops) return 0;
  return Math.max(...rule.spreadsM.map((spread) => logLikelihood(new Float64Array(count), spread, rule)));
}

function residualsOf(timesS: Float64Array, levels: Float64Array, spread: number): Float64Array {
  const weights = new Float64Array(levels.length).fill(1);
  const residuals = new Float64Array(levels.length);
  for (let round = 0; round < rounds; round++) {
    let w = 0;
    let x = 0;
    let y = 0;
    let xx = 0;
    let xy = 0;
    for (let i = 0; i < levels.length; i++) {
      const timeS = timesS[i];
      w += weights[i];
      x += weights[i] * timeS;
      y += weights[i] * levels[i];
      xx += weights[i] * timeS * timeS;
      xy += weights[i] * timeS * levels[i];
    }
    const wide = xx - (x * x) / w;
    const slope = wide > 0 ? (xy - (x * y) / w) / wide : 0;
    for (let i = 0; i < levels.length; i++) {
      residuals[i] = levels[i] - y / w - slope * (timesS[i] - x / w);
      weights[i] = 1 / (1 + (residuals[i] / (2 * spread)) ** 2);
    }
  }
  return residuals;
}

function logLikelihood(residuals: Float64Array, spread: number, { strayShare, strayReachM }: TopRule): number {
  const greatest = Math.sqrt(2 * Math.PI) * spread;
  let sum = 0;
  for (const residual of residuals) {
    const near = Math.exp(-0.5 * (residual / spread) ** 2) / greatest;
    const stray = Math.abs(residual) < strayReachM ? 1 / (2 * strayReachM) : 1e-3;
    sum += Math.log((1 - strayShare) * near + strayShare * stray);
  }
  return sum;
}
