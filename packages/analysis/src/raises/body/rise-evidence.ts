import type { Bank } from './bank.ts';
import type { Correlations } from './correlations.ts';
import { logNormalCdf } from './log-normal.ts';
import type { Whitened } from './whitening.ts';

/** One way a rise and a misfit may be spread: a normal rise above a least, noise grown by a share of the shape. */
export interface RiseComponent {
  readonly logShare: number;
  readonly level: number;
  readonly spread: number;
  /** rise below which the prior holds nothing; -Infinity for no limit [m] */
  readonly least: number;
  /** standard deviation of the misfit for the template's own size, as a rise [m] */
  readonly misfit: number;
}

/** Numbers of one component for one template that do not depend on the place. */
interface Constants {
  readonly energy: number;
  readonly variance: number;
  readonly level: number;
  readonly halfTotal: number;
  readonly base: number;
  readonly reachAt0: number;
  readonly reachPerM: number;
}

function constantsOf(one: RiseComponent, energy: number, cells: number, held: number, noise: number): Constants {
  const variance = noise + (one.misfit * one.misfit * energy) / Math.max(1, cells);
  const riseVariance = variance / energy;
  const prior = one.spread * one.spread;
  const total = prior + riseVariance;
  const sd = Math.sqrt((prior * riseVariance) / total);
  const gain = prior / total;
  const limited = Number.isFinite(one.least);
  return {
    energy,
    variance,
    level: one.level,
    halfTotal: 0.5 / total,
    base:
      one.logShare -
      0.5 * Math.log(total / riseVariance) -
      0.5 * held * Math.log(variance / noise) -
      (limited ? logNormalCdf((one.level - one.least) / one.spread) : 0),
    reachAt0: limited ? ((1 - gain) * one.level - one.least) / sd : Infinity,
    reachPerM: limited ? gain / sd : 0,
  };
}

/**
 * Log Bayes factor of a movement against standing still, for each template at each cell.
 *
 * The rise is drawn from a mixture of normals and integrated out in closed form. Within a movement the noise grows by a
 * share of the template's own size, because no real movement has exactly the template's shape.
 *
 * @param whitened - prediction errors of the acceleration [m/s2]
 * @param correlations - of the same signal with the bank [m2/s4]
 * @param bank - templates [m/s2 per m]
 * @param noiseVariance - of standing, > 0 [m2/s4]
 * @param componentsOf - the mixture for each span of time [m]
 * @param spanOf - span of each cell [-]
 * @returns log factors laid out like the products, -Infinity where a template does not fit in [nat]
 *
 * Source: normal linear model with known noise, e.g. Bishop (2006), Pattern Recognition and Machine Learning, 2.3.3
 */
export function logBayesFactors(
  whitened: Whitened,
  correlations: Correlations,
  bank: Bank,
  noiseVariance: number,
  componentsOf: readonly (readonly RiseComponent[])[],
  spanOf: Uint8Array,
): Float32Array {
  const { products, count, energies, maskedEnergies } = correlations;
  const cells = whitened.samples.length;
  const factors = new Float32Array(cells * count).fill(-Infinity);
  const lengths = Float64Array.from(bank.templates, (template) => template.cells);
  const tables = componentsOf.map((components) =>
    bank.templates.map((template, k) =>
      components.map((one) => constantsOf(one, energies[k], template.cells, template.cells, noiseVariance)),
    ),
  );
  const values = new Float64Array(Math.max(...componentsOf.map((components) => components.length)));
  for (let i = 0; i < cells; i++) {
    const span = spanOf[i];
    const table = tables[span];
    const row = i * count;
    for (let k = 0; k < count; k++) {
      const length = lengths[k];
      if (i + length > cells) break;
      let constants = table[k];
      const energy = maskedEnergies === undefined ? energies[k] : maskedEnergies[row + k];
      if (energy < energies[k]) {
        const held = whitened.counts[i + length] - whitened.counts[i];
        if (energy < 1e-9 * energies[k] || held === 0) {
          factors[row + k] = 0;
          continue;
        }
        constants = componentsOf[span].map((one) => constantsOf(one, energy, held, held, noiseVariance));
      }
      const square = whitened.squares[i + length] - whitened.squares[i];
      const rise = products[row + k] / energy;
      const left = Math.max(0, square - rise * rise * energy);
      let most = -Infinity;
      for (let c = 0; c < constants.length; c++) {
        const one = constants[c];
        const offset = rise - one.level;
        let value = one.base - offset * offset * one.halfTotal - (0.5 * left) / one.variance;
        const reach = one.reachAt0 + one.reachPerM * rise;
        if (reach < 5) value += logNormalCdf(reach);
        values[c] = value;
        if (value > most) most = value;
      }
      let sum = 0;
      for (let c = 0; c < constants.length; c++) {
        const gap = values[c] - most;
        if (gap > -20) sum += gap === 0 ? 1 : Math.exp(gap);
      }
      factors[row + k] = most + (sum === 1 ? 0 : Math.log(sum)) + (0.5 * square) / noiseVariance;
    }
  }
  return factors;
}
