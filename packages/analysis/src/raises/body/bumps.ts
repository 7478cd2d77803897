import { type Bank, templateBank } from './bank.ts';
import { correlate } from './correlations.ts';
import { logBayesFactors, type RiseComponent } from './rise-evidence.ts';
import type { BodySettings } from './settings.ts';
import { type Template } from './template.ts';
import type { Whitened } from './whitening.ts';

/** Smooth movements that are no repetitions, while standing: there and back, or from one posture to another. */
export interface Bumps {
  readonly classCells: readonly number[];
  /** log weight of a bump of class c that begins at cell i, at i * classes + c, its rate included [nat] */
  readonly weights: Float64Array;
}

/** One way of a unit move at rest at both ends: the body sinks or comes up and stays there. */
function oneWay(durationS: number, rateHz: number): Template {
  const cells = Math.max(3, Math.round(durationS * rateHz));
  const acceleration = new Float64Array(cells);
  const speed = (share: number): number => (30 * share * share * (1 - share) * (1 - share) * rateHz) / cells;
  for (let i = 0; i < cells; i++) acceleration[i] = (speed((i + 1) / cells) - speed(i / cells)) * rateHz;
  const endS = cells / rateHz;
  return {
    acceleration,
    cells,
    durationS: endS,
    holdShare: 0,
    fallRatio: 1,
    dip: false,
    openFrom: 0,
    openTo: 0,
    startS: 0,
    topS: endS,
    highFromS: endS,
    highToS: endS,
    endS,
  };
}

/**
 * Templates of smooth movements that are no repetitions.
 *
 * @param rateHz - cells per second of the model grid, > 0 [Hz]
 * @returns there-and-back moves of 0.3 to 3 s and one-way moves, sorted by length [m/s2 per m]
 *
 * Source: ours
 */
export function bumpBank(rateHz: number): Bank {
  const grid = {
    fromS: 0.3,
    toS: 3,
    durationStep: 0.21,
    holdShares: [0, 0.3],
    fallRatios: [1],
  };
  const oneWays = Array.from({ length: 9 }, (_, i) => oneWay(0.25 * 10 ** (i / 8), rateHz));
  return templateBank([grid], rateHz, oneWays);
}

/**
 * Log weights of smooth movements that are no repetitions, for each cell at which one may begin.
 *
 * Up or down alike, of any size between fidgeting and sitting down: their size says nothing about the set.
 *
 * @param whitened - prediction errors of the acceleration [m/s2]
 * @param bank - from {@link bumpBank} [m/s2 per m]
 * @param coefficients - of the prediction [-]
 * @param noiseVariance - of standing, > 0 [m2/s4]
 * @param beside - log ratio of other movement in each cell from elsewhere [nat]
 * @param settings - how often such movements begin and how large they are [1/s, m]
 * @returns weights by class of length [nat]
 *
 * Source: ours
 */
export function bumpWeights(
  whitened: Whitened,
  bank: Bank,
  coefficients: Float64Array,
  noiseVariance: number,
  beside: Float64Array,
  settings: BodySettings,
): Bumps {
  const cells = whitened.samples.length;
  const components: RiseComponent[] = settings.bumpSizesM.flatMap((spread) =>
    [0.35].map((misfit) => ({
      logShare: -Math.log(settings.bumpSizesM.length),
      level: 0,
      spread,
      least: -Infinity,
      misfit: misfit * spread,
    })),
  );
  const correlations = correlate(whitened, bank, coefficients);
  const factors = logBayesFactors(
    whitened,
    correlations,
    bank,
    noiseVariance,
    [components],
    new Uint8Array(cells + 1),
    undefined,
  );
  const classes = bank.classCells.length;
  const count = bank.templates.length;
  const weights = new Float64Array(cells * classes).fill(-Infinity);
  const base = Math.log(settings.bumpsPerS / settings.modelRateHz / count);
  const sums = new Float64Array(cells + 1);
  for (let i = 0; i < cells; i++) sums[i + 1] = sums[i] + beside[i];
  for (let i = 0; i < cells; i++) {
    for (let c = 0; c < classes; c++) {
      if (i + bank.classCells[c] > cells) break;
      let most = -Infinity;
      for (let k = bank.classStart[c]; k < bank.classStart[c + 1]; k++) most = Math.max(most, factors[i * count + k]);
      let sum = 0;
      for (let k = bank.classStart[c]; k < bank.classStart[c + 1]; k++) sum += Math.exp(factors[i * count + k] - most);
      weights[i * classes + c] = base + most + Math.log(sum) + sums[i + bank.classCells[c]] - sums[i];
    }
  }
  return { classCells: bank.classCells, weights };
}
