import { createRandom } from '../../signal/random.ts';
import { type Bank, type ShapeGrid, templateBank } from './bank.ts';
import { bumpBank, bumpWeights } from './bumps.ts';
import { type Correlations, correlate } from './correlations.ts';
import { type Forward, forwardPass, type PathInput } from './forward.ts';
import { learnRhythm } from './learning.ts';
import { logAdd } from './log-sum.ts';
import { otherMovementRatio } from './other-movement.ts';
import { type Path, samplePaths } from './path-sampling.ts';
import { priorTables } from './prior-tables.ts';
import { learnProfile, type Profile, profileTemplate } from './profile.ts';
import { priorRhythm, type Rhythm, repetitionComponents } from './rhythm.ts';
import { logBayesFactors } from './rise-evidence.ts';
import type { BodySettings } from './settings.ts';
import { learnSideways, type SidewaysLevel, sidewaysRatio } from './sideways.ts';
import { repetitionTemplate, type Template } from './template.ts';
import { type Whitened, whiten } from './whitening.ts';

/** Acceleration of the body on the model grid. */
export interface ModelSignal {
  /** upward acceleration, slow drift removed [m/s2] */
  readonly acceleration: Float64Array;
  /** 1 where the cell holds data [-] */
  readonly present: Uint8Array;
  /** 1 where an impact begins [-] */
  readonly impacts: Float64Array;
  /** 1 where no heel raise is possible [-] */
  readonly barred: Uint8Array;
  /** log mean square of the acceleration across gravity, trunk only [-] */
  readonly logPower?: Float64Array;
  /** time of the first cell boundary [s] */
  readonly startS: number;
}

/** A set as it was learnt, with segmentations drawn from its posterior. */
export interface FittedSet {
  readonly rhythm: Rhythm;
  readonly bank: Bank;
  readonly whitened: Whitened;
  readonly correlations: Correlations;
  readonly paths: readonly Path[];
  /** log evidence for a set against none [nat] */
  readonly evidence: number;
}

interface Round {
  readonly bank: Bank;
  readonly whitened: Whitened;
  readonly correlations: Correlations;
  readonly input: PathInput;
  readonly forward: Forward;
  readonly evidence: number;
}

const SPANS = 8;

function broadGrid(settings: BodySettings): ShapeGrid {
  return {
    fromS: settings.shortestS,
    toS: settings.longestS,
    durationStep: 0.14,
    holdShares: [0, 0.2, 0.45],
    fallRatios: [0.7, 1, 1.45],
    twoPhases: true,
    swinging: true,
  };
}

/** A finer grid about what was learnt, and a coarse one for the repetition that is unlike the others. */
function narrowGrids(rhythm: Rhythm, settings: BodySettings): ShapeGrid[] {
  const reach = 2.2 * rhythm.logDurationSpread + Math.abs(rhythm.logDurationSlope) * 30;
  const fromS = Math.max(settings.shortestS, Math.exp(rhythm.logDuration - reach));
  const toS = Math.min(settings.longestS, Math.max(1.15 * fromS, Math.exp(rhythm.logDuration + reach)));
  const holdShares = [-1, 0, 1]
    .map((step) => Math.max(0, Math.min(0.6, rhythm.holdShare + 1.2 * step * rhythm.holdSpread)))
    .filter((share, index, all) => index === 0 || share - all[index - 1] > 0.03);
  const fallRatios = [-1, 0, 1].map((step) => Math.exp(rhythm.logFallRatio + 1.2 * step * rhythm.logFallSpread));
  const near = { fromS, toS, durationStep: 0.08, holdShares, fallRatios };
  // movements that swing into each other leave no rest to make up for a length between two of the grid
  const cells = settings.modelRateHz * Math.exp(rhythm.logDuration);
  const swing = { fromS, toS, durationStep: 1 / cells, holdShares: [0], fallRatios: [], swinging: true };
  const far = {
    ...broadGrid(settings),
    durationStep: 0.25,
    holdShares: [0.1, 0.5],
    fallRatios: [1],
    twoPhases: false,
    swinging: false,
  };
  return [near, swing, far];
}

/** Templates whose top dips: the moves of the set, and a longer time between them of which nothing is asked. */
function dippedTemplates(rhythm: Rhythm, settings: BodySettings): Template[] {
  const usualS = Math.exp(rhythm.logDuration);
  const steadyS = rhythm.holdShare * usualS;
  return [0.88, 1, 1.13].flatMap((factor) =>
    Array.from({ length: 10 }, (_, i) => {
      const movesS = factor * (usualS - steadyS);
      const durationS = movesS + steadyS + 0.15 + 0.1 * i * Math.max(1, usualS / 2);
      const shape = { durationS, holdShare: 1 - movesS / durationS, fallRatio: Math.exp(rhythm.logFallRatio), steadyS };
      return repetitionTemplate(shape, settings.modelRateHz);
    }),
  );
}

/** Templates of the shape that the set shares, over the durations that it uses. */
function sharedTemplates(profile: Profile | undefined, rhythm: Rhythm, settings: BodySettings): Template[] {
  if (profile === undefined) return [];
  const reach = 2.4 * rhythm.logDurationSpread + Math.abs(rhythm.logDurationSlope) * 30;
  const steps = Math.max(2, Math.round((2 * reach) / 0.04));
  return Array.from({ length: steps + 1 }, (_, i) => {
    const durationS = Math.exp(rhythm.logDuration + reach * ((2 * i) / steps - 1));
    return profileTemplate(profile, durationS, settings.modelRateHz);
  });
}

/** Takes away every repetition of which more than a third lies where none is possible. */
function bar(factors: Float32Array, bank: Bank, barred: Uint8Array): void {
  const count = bank.templates.length;
  const sums = new Float64Array(barred.length + 1);
  for (let i = 0; i < barred.length; i++) sums[i + 1] = sums[i] + barred[i];
  if (sums[barred.length] === 0) return;
  for (let i = 0; i < barred.length; i++) {
    for (let k = 0; k < count; k++) {
      const length = bank.templates[k].cells;
      if (i + length > barred.length) break;
      if (sums[i + length] - sums[i] > length / 3) factors[i * count + k] = -Infinity;
    }
  }
}

/** Evidence of one belief about the set. */
function weigh(
  signal: ModelSignal,
  bank: Bank,
  rhythm: Rhythm,
  sideways: SidewaysLevel | undefined,
  settings: BodySettings,
): Round {
  const { acceleration, present, startS } = signal;
  const cells = acceleration.length;
  const timeOf = (cell: number): number => startS + cell / settings.modelRateHz;
  const whitened = whiten(acceleration, present, rhythm.noiseCoefficients);
  const correlations = correlate(whitened, bank, rhythm.noiseCoefficients);
  const centres = Array.from({ length: SPANS }, (_, span) => timeOf(((span + 0.5) * cells) / SPANS));
  const tables = priorTables(bank, rhythm, settings, centres);
  const spanOf = Uint8Array.from({ length: cells + 1 }, (_, b) => Math.min(SPANS - 1, Math.floor((b * SPANS) / cells)));
  const components = centres.map((centreS) => repetitionComponents(rhythm, settings.leastRiseM, centreS));
  const other = otherMovementRatio(whitened, rhythm.noiseVariance, settings);
  const beside = new Float64Array(cells);
  if (signal.logPower !== undefined && sideways !== undefined) {
    beside.set(sidewaysRatio(signal.logPower, sideways, settings.sidewaysWindowS * settings.modelRateHz));
  }
  for (let i = 0; i < cells; i++) other[i] += beside[i] + settings.impactEvidence * signal.impacts[i];
  const open = new Float64Array(cells + 1);
  for (let i = 0; i < cells; i++) open[i + 1] = open[i] + logAdd(0, other[i]) - Math.LN2;
  const { noiseCoefficients, noiseVariance } = rhythm;
  const factors = logBayesFactors(whitened, correlations, bank, noiseVariance, components, spanOf, open);
  bar(factors, bank, signal.barred);
  const bumps = bumpWeights(
    whitened,
    bumpBank(settings.modelRateHz),
    noiseCoefficients,
    noiseVariance,
    beside,
    settings,
  );
  const input: PathInput = { cells, bank, factors, bumps, other, tables, spanOf, rhythm, settings };
  const forward = forwardPass(input);
  const held = whitened.counts[cells];
  const standing = -0.5 * (held * Math.log(rhythm.noiseVariance) + whitened.squares[cells] / rhythm.noiseVariance);
  return { bank, whitened, correlations, input, forward, evidence: forward.evidence + standing };
}

/** Log evidence for a set against none [nat]. */
function oddsOf(round: Round): number {
  return round.forward.evidence - round.forward.evidenceOfNone;
}

/** First guesses at the noise: low quantiles of the mean square over half a second. */
function noiseGuesses(signal: ModelSignal, settings: BodySettings): number[] {
  const width = Math.round(settings.modelRateHz / 2);
  const squares: number[] = [];
  for (let from = 0; from + width <= signal.acceleration.length; from += width) {
    let sum = 0;
    let held = 0;
    for (let i = from; i < from + width; i++) {
      sum += signal.present[i] * signal.acceleration[i] ** 2;
      held += signal.present[i];
    }
    if (held >= width / 2) squares.push(sum / held);
  }
  if (squares.length === 0) return [1e-4];
  squares.sort((a, b) => a - b);
  const at = (share: number): number => Math.max(1e-7, squares[Math.floor(share * (squares.length - 1))]);
  const floor = settings.firstMisfit ** 2 * at(0.75);
  const [low, middle] = [Math.max(floor, at(0.12)), Math.max(floor, at(0.5))];
  return middle < 2 * low ? [low] : [low, middle];
}

/**
 * A set fitted to a recording: its rhythm by empirical Bayes and segmentations drawn from their posterior.
 *
 * The first round is run for a few guesses at the noise and the one with the most evidence goes on. Each later round
 * learns the rhythm from sampled paths and lays the templates finer about it.
 *
 * @param signal - acceleration on the model grid [m/s2]
 * @param settings - priors and sizes [-]
 * @returns rhythm, templates and sampled paths [-]
 *
 * Source: ours
 */
export function fitSet(signal: ModelSignal, settings: BodySettings): FittedSet {
  const random = createRandom(settings.seed);
  const cells = signal.acceleration.length;
  const centreS = signal.startS + cells / settings.modelRateHz / 2;
  const timeOf = (cell: number): number => signal.startS + cell / settings.modelRateHz;
  const broad = templateBank([broadGrid(settings)], settings.modelRateHz);
  const first = (noise: number): Round => {
    const early = { ...settings, bumpsPerS: settings.firstBumpsPerS };
    return weigh(signal, broad, priorRhythm(settings, centreS, noise), undefined, early);
  };
  const guesses = noiseGuesses(signal, settings);
  let round = first(guesses[0]);
  for (const noise of guesses.slice(1)) {
    const other = first(noise);
    if (other.evidence > round.evidence) round = other;
  }
  // in a quiet recording a shape that is not known yet looks like other movement: blur it until it does not
  for (let blur = 0; blur < 3 && oddsOf(round) < settings.leastEvidence; blur++) {
    const blurred = first(4 * round.input.rhythm.noiseVariance);
    if (oddsOf(blurred) < oddsOf(round)) break;
    round = blurred;
  }
  for (let n = 0; n < settings.learningRounds; n++) {
    const paths = samplePaths(round.input, round.forward, settings.learningPaths, random);
    // from coarse to fine: a shape that is not known yet must not be lost to other movement in a quiet recording
    const left = (settings.learningRounds - 1 - n) / settings.learningRounds;
    const cooled = {
      ...settings,
      gridMisfit: settings.gridMisfit * (settings.firstMisfit / settings.gridMisfit) ** left,
    };
    const { whitened, correlations, bank, input } = round;
    const rhythm = learnRhythm(signal.acceleration, whitened, correlations, bank, input.rhythm, paths, cooled, timeOf);
    const { acceleration, present } = signal;
    const profile =
      n === 0
        ? undefined
        : learnProfile(
            acceleration,
            present,
            bank,
            correlations,
            rhythm,
            paths,
            settings.modelRateHz,
            settings.shapeSpread,
            timeOf,
          );
    const next =
      n === 0
        ? broad
        : templateBank(narrowGrids(rhythm, settings), settings.modelRateHz, [
            ...sharedTemplates(profile, rhythm, settings),
            ...dippedTemplates(rhythm, settings),
          ]);
    const sideways = signal.logPower && learnSideways(signal.logPower, bank, paths);
    round = weigh(
      signal,
      next,
      rhythm,
      sideways,
      n === 0 ? { ...settings, bumpsPerS: settings.firstBumpsPerS } : settings,
    );
  }
  const paths = samplePaths(round.input, round.forward, settings.paths, random);
  const { bank, whitened, correlations, input } = round;
  const evidence = oddsOf(round);
  return { rhythm: input.rhythm, bank, whitened, correlations, paths, evidence };
}
