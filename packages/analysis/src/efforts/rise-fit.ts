import { solveSymmetric } from '../raises/heel/linear-solve.ts';
import { dampedFit } from './damped-fit.ts';
import type { OnsetRule, RisePrior } from './effort-settings.ts';
import type { Figure } from './figure.ts';
import type { Samples } from './rest-level.ts';
import { forceOnCurve, type RiseCurve } from './rise-curve.ts';

/** Noise of the samples of a rise. */
export interface RiseNoise {
  /** standard deviation of a sample at rest, > 0 [unit of samples] */
  readonly sample: number;
  /** standard deviation of its stamp [s] */
  readonly stampS: number;
}

/** What a fit begins with. */
export interface FirstRise {
  readonly startS: number;
  readonly riseS: number;
  readonly height: number;
}

/** The rise as the samples leave it. */
export interface FittedRise {
  /** mean over every form that was tried, each as probable as the samples make it, and its spread [s] */
  readonly startS: Figure;
  /** the most probable one */
  readonly curve: RiseCurve;
  /** mean first power of time over every form: 1 starts in a bend, more starts softly [-] */
  readonly power: number;
  /** probability that slack is taken up first [-] */
  readonly takeUp: number;
}

/** One form of the curve: what is not fitted but tried. */
interface Form {
  readonly power: number;
  readonly takesUp: boolean;
}

/** Means of samples that follow each other. */
interface Blocks {
  readonly timesS: Float64Array;
  readonly means: Float64Array;
  readonly count: number;
}

/**
 * How many samples are averaged before a rise is fitted.
 *
 * @param count - samples of the rise [-]
 * @param rule - see {@link OnsetRule} [-]
 * @returns samples in a mean, at least one [-]
 *
 * Source: definition
 */
export function averagedCount(count: number, { mostBlocks }: Pick<OnsetRule, 'mostBlocks'>): number {
  return Math.max(1, Math.floor(count / mostBlocks));
}

function blockMeans({ timesS, samples }: Samples, count: number): Blocks {
  if (count === 1) return { timesS, means: samples, count };
  const blocks = Math.floor(timesS.length / count);
  const times = new Float64Array(blocks);
  const means = new Float64Array(blocks);
  for (let k = 0; k < blocks; k++) {
    for (let i = k * count; i < (k + 1) * count; i++) {
      times[k] += timesS[i] / count;
      means[k] += samples[i] / count;
    }
  }
  return { timesS: times, means, count };
}

/** Names of the fitted parameters by their place. */
const [START, RISE, SETTLING, HEIGHT, TAKE_UP, SHARE, TAKE_UP_POWER] = [0, 1, 2, 3, 4, 5, 6] as const;

function curveOf(q: Float64Array, { power, takesUp }: Form): RiseCurve {
  const takeUpS = takesUp ? Math.exp(q[TAKE_UP]) : 0;
  return {
    startS: q[START] - takeUpS,
    takeUpS,
    takeUpShare: takesUp ? Math.min(0.5, Math.exp(q[SHARE])) : 0,
    takeUpPower: takesUp ? Math.exp(q[TAKE_UP_POWER]) : 1,
    riseS: Math.exp(q[RISE]),
    power,
    settling: q[SETTLING],
    height: Math.exp(q[HEIGHT]),
  };
}

/** Mean force of the curve over a block: the force at its middle, unless the curve bends inside it. */
function forceInBlock(curve: RiseCurve, middleS: number, count: number, sampleS: number): number {
  const halfS = (count * sampleS) / 2;
  const bends = Math.abs(middleS - curve.startS) < halfS || Math.abs(middleS - curve.startS - curve.takeUpS) < halfS;
  if (count === 1 || !bends) return forceOnCurve(curve, middleS);
  let sum = 0;
  for (let i = 0; i < count; i++) sum += forceOnCurve(curve, middleS + (i - (count - 1) / 2) * sampleS);
  return sum / count;
}

/** Large departures count less: those of a distribution of Student with few degrees of freedom. */
function softened(departure: number, freedom: number): number {
  const cost = (freedom + 1) * Math.log1p((departure * departure) / freedom);
  return departure < 0 ? -Math.sqrt(cost) : Math.sqrt(cost);
}

interface Expected {
  readonly place: number;
  readonly middle: number;
  readonly spread: number;
}

function expectations(first: FirstRise, form: Form, prior: RisePrior): Expected[] {
  const plain = [
    { place: START, middle: first.startS, spread: prior.startSpread * first.riseS },
    { place: RISE, middle: Math.log(first.riseS), spread: prior.riseSpread },
    { place: SETTLING, middle: prior.settling, spread: prior.settlingSpread },
    { place: HEIGHT, middle: Math.log(first.height), spread: prior.heightSpread },
  ];
  if (!form.takesUp) return plain;
  return [
    ...plain,
    { place: TAKE_UP, middle: Math.log(prior.takeUpS), spread: prior.takeUpSpread },
    { place: SHARE, middle: Math.log(prior.takeUpShare), spread: prior.shareSpread },
    { place: TAKE_UP_POWER, middle: Math.log(prior.takeUpPower), spread: prior.takeUpPowerSpread },
  ];
}

interface FormFit {
  readonly parameters: Float64Array;
  readonly curve: RiseCurve;
  readonly startU: number;
  /** logarithm of the probability of the samples under this form, up to a constant [-] */
  readonly evidence: number;
}

function fitForm(
  { timesS, means, count }: Blocks,
  first: FirstRise,
  form: Form,
  noise: RiseNoise,
  rule: OnsetRule,
  prior: RisePrior,
  near: Float64Array | null,
): FormFit | null {
  const expected = expectations(first, form, prior);
  const size = expected.length;
  const spacingS = (timesS[timesS.length - 1] - timesS[0]) / (timesS.length - 1);
  const wavering = rule.unsteadyShare * Math.sqrt(Math.max(1, 1 / (rule.unsteadyHz * spacingS)));
  const sampleVariance = noise.sample * noise.sample;
  const stampVariance = noise.stampS * noise.stampS;
  const departures = (q: Float64Array): Float64Array => {
    const curve = curveOf(q, form);
    const out = new Float64Array(timesS.length + size);
    let before = 0;
    for (let i = 0; i < timesS.length; i++) {
      const force = forceInBlock(curve, timesS[i], count, spacingS / count);
      const slope = (force - before) / spacingS;
      before = force;
      const white = (sampleVariance + stampVariance * slope * slope) / count;
      const sd = Math.sqrt(white + wavering * force * wavering * force);
      out[i] = softened((means[i] - force) / sd, rule.freedom);
    }
    expected.forEach(({ place, middle, spread }, k) => {
      out[timesS.length + k] = (q[place] - middle) / spread;
    });
    return out;
  };
  const begin = Float64Array.from(expected, ({ middle }, k) => near?.[k] ?? middle);
  const steps = Float64Array.from([0.02 * spacingS, 1e-3, 1e-3, 1e-4, 1e-3, 1e-3, 1e-3]).subarray(0, size);
  const fit = dampedFit(begin, steps, departures);
  if (fit === null) return null;
  const curve = curveOf(fit.parameters, form);
  const toStart = new Float64Array(size);
  toStart[START] = 1;
  if (form.takesUp) toStart[TAKE_UP] = -curve.takeUpS;
  const root = fit.curvature.slice();
  const solved = toStart.slice();
  if (!solveSymmetric(root, [solved], size)) return null;
  let evidence = -fit.cost;
  for (let j = 0; j < size; j++) evidence -= Math.log(root[j * size + j]) + Math.log(expected[j].spread);
  const variance = solved.reduce((sum, value, j) => sum + value * toStart[j], 0);
  if (!Number.isFinite(evidence)) return null;
  return { parameters: fit.parameters, curve, startU: Math.sqrt(Math.max(0, variance)), evidence };
}

/**
 * The start of a rise whose form is not known: a curve is fitted for each of several first powers, with and without slack
 * that is taken up first, and every start counts as much as the samples make its form probable.
 *
 * @param parts - samples above the resting level, from before the start to high on the rise, n >= 6: once for every account of
 *   when they were taken, each as likely as the others beforehand [s, N or N.m]
 * @param first - where to begin [s, N or N.m]
 * @param noise - of a sample and of its stamp [unit of samples, s]
 * @param rule - how onsets are found, see {@link OnsetRule} [-]
 * @param prior - what is expected of such a rise, see {@link RisePrior} [-]
 * @returns start with its standard uncertainty, and the most probable curve; null when nothing fits [s, unit of samples]
 *
 * Source: weights of models by Laplace's approximation: Kass & Raftery (1995), J Am Stat Assoc 90:773-795, 4.1; large
 * departures as in Lange, Little & Taylor (1989), J Am Stat Assoc 84:881-896
 */
export function fitRise(
  parts: readonly Samples[],
  first: FirstRise,
  noise: RiseNoise,
  rule: OnsetRule,
  prior: RisePrior,
): FittedRise | null {
  const fits: FormFit[] = [];
  const accounts = parts.map((part) => blockMeans(part, averagedCount(part.timesS.length, rule)));
  for (const [blocks, takesUp] of accounts.flatMap((one) => [[one, false] as const, [one, true] as const])) {
    const powers = takesUp ? prior.takenUpPowers : prior.powers;
    const chances = powers.map((power) => Math.exp(-0.5 * (Math.log(power / prior.power) / prior.powerSpread) ** 2));
    const all = chances.reduce((sum, one) => sum + one, 0);
    const chance = takesUp ? prior.takeUpChance : 1 - prior.takeUpChance;
    // the next power fits much as the one before does
    let near: Float64Array | null = null;
    for (const [k, power] of powers.entries()) {
      const fit: FormFit | null = fitForm(blocks, first, { power, takesUp }, noise, rule, prior, near);
      near = fit === null ? null : fit.parameters;
      if (fit !== null) fits.push({ ...fit, evidence: fit.evidence + Math.log((chance * chances[k]) / all) });
    }
  }
  if (fits.length === 0) return null;
  const best = fits.reduce((most, one) => (one.evidence > most.evidence ? one : most));
  const weights = fits.map(({ evidence }) => Math.exp(evidence - best.evidence));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const meanOf = (value: (fit: (typeof fits)[number]) => number): number =>
    fits.reduce((sum, fit, k) => sum + (weights[k] / total) * value(fit), 0);
  const startS = meanOf(({ curve }) => curve.startS);
  const variance = meanOf(({ curve, startU }) => startU * startU + (curve.startS - startS) ** 2);
  return {
    startS: { value: startS, u: Math.sqrt(variance) },
    curve: best.curve,
    power: meanOf(({ curve }) => curve.power),
    takeUp: meanOf(({ curve }) => (curve.takeUpShare === 0 ? 0 : 1)),
  };
}
