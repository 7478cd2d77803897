import type { Bank } from './bank.ts';
import { bumpBank, bumpWeights } from './bumps.ts';
import { type Correlations, correlate } from './correlations.ts';
import { type Forward, forwardPass, type PathInput } from './forward.ts';
import { logAdd } from './log-sum.ts';
import { otherMovementRatio } from './other-movement.ts';
import { priorTables } from './prior-tables.ts';
import { type Rhythm, repetitionComponents } from './rhythm.ts';
import { logBayesFactors } from './rise-evidence.ts';
import type { BodySettings } from './settings.ts';
import { type SidewaysLevel, sidewaysRatio } from './sideways.ts';
import { type Whitened, whiten } from './whitening.ts';

/** Acceleration of the body on the model grid. */
export interface ModelSignal {
  /** upward acceleration, slow drift removed [m/s2] */
  readonly acceleration: Float64Array;
  /** 1 where the cell holds data [-] */
  readonly present: Uint8Array;
  /** 1 where an impact begins [-] */
  readonly impacts: Float64Array;
  /** acceleration of the cells that are left out because an impact disturbs them, NaN elsewhere [m/s2] */
  readonly disturbed?: Float64Array;
  /** 1 where no heel raise is possible [-] */
  readonly barred: Uint8Array;
  /** log mean square of the acceleration across gravity, trunk only [-] */
  readonly logPower?: Float64Array;
  /** time of the first cell boundary [s] */
  readonly startS: number;
}

/** A recording weighed under one belief about its set. */
export interface Round {
  readonly bank: Bank;
  readonly whitened: Whitened;
  readonly correlations: Correlations;
  readonly input: PathInput;
  readonly forward: Forward;
  readonly evidence: number;
}

/** spans of time over which levels that drift are tabulated */
const SPANS = 8;

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

/**
 * A recording weighed under one belief about its set.
 *
 * @param signal - acceleration on the model grid and what is known beside it [m/s2]
 * @param bank - templates [m/s2 per m]
 * @param rhythm - the belief [m, s, -]
 * @param sideways - usual movement across gravity, once it is known [-]
 * @param settings - priors and rates [-]
 * @param alike - a round of the same signal, bank, belief and settings but for the noise: what does not hang on it is taken over [-]
 * @returns evidence and all that paths are drawn from [nat]
 *
 * Source: ours
 */
export function weigh(
  signal: ModelSignal,
  bank: Bank,
  rhythm: Rhythm,
  sideways: SidewaysLevel | undefined,
  settings: BodySettings,
  alike?: Round,
): Round {
  const { acceleration, present, startS } = signal;
  const cells = acceleration.length;
  const timeOf = (cell: number): number => startS + cell / settings.modelRateHz;
  const whitened = alike?.whitened ?? whiten(acceleration, present, rhythm.noiseCoefficients);
  const correlations = alike?.correlations ?? correlate(whitened, bank, rhythm.noiseCoefficients);
  const centres = Array.from({ length: SPANS }, (_, span) => timeOf(((span + 0.5) * cells) / SPANS));
  const tables = alike?.input.tables ?? priorTables(bank, rhythm, settings, centres);
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

/**
 * Log evidence for a set against none.
 *
 * @param round - a recording weighed under one belief [nat]
 * @returns log of the ratio of the evidence of all paths to that of the paths without repetitions [nat]
 *
 * Source: definition
 */
export function oddsOf(round: Round): number {
  return round.forward.evidence - round.forward.evidenceOfNone;
}

/**
 * First guesses at the variance of the noise: low quantiles of the mean square over half a second.
 *
 * @param signal - acceleration on the model grid [m/s2]
 * @param settings - rate of the grid and least share of the movement [Hz, -]
 * @param isFull - whether repetitions may leave hardly any standing, and then be of a shape that fits well [-]
 * @returns one to three variances, the smallest first [m2/s4]
 *
 * Source: ours
 */
export function noiseGuesses(signal: ModelSignal, settings: BodySettings, isFull = false): number[] {
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
  const least = isFull ? Math.min(low, Math.max(at(0.02), low / 9)) : low;
  return [least, low, middle].filter((guess, k, all) => k === 0 || guess >= 2 * all[k - 1]);
}
