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

/** Numbers of one component for one template that do not depend on the place, seven to a component. */
const [VARIANCE, LEVEL, HALF_TOTAL, BASE, REACH, REACH_PER_M, GROWTH] = [0, 1, 2, 3, 4, 5, 6];
const NUMBERS = 7;
/** steps in which the share of a template outside gaps is rounded */
const ENERGY_STEPS = 16;

function constantsOf(
  components: readonly RiseComponent[],
  energy: number,
  fullEnergy: number,
  cells: number,
  noise: number,
): Float64Array {
  const constants = new Float64Array(components.length * NUMBERS);
  components.forEach((one, c) => {
    const variance = noise + (one.misfit * one.misfit * fullEnergy) / cells;
    const riseVariance = variance / energy;
    const prior = one.spread * one.spread;
    const total = prior + riseVariance;
    const sd = Math.sqrt((prior * riseVariance) / total);
    const gain = prior / total;
    const limited = Number.isFinite(one.least);
    const at = c * NUMBERS;
    constants[at + VARIANCE] = variance;
    constants[at + GROWTH] = 0.5 * Math.log(variance / noise);
    constants[at + LEVEL] = one.level;
    constants[at + HALF_TOTAL] = 0.5 / total;
    constants[at + BASE] =
      one.logShare -
      0.5 * Math.log(total / riseVariance) -
      (limited ? logNormalCdf((one.level - one.least) / one.spread) : 0);
    constants[at + REACH] = limited ? ((1 - gain) * one.level - one.least) / sd : Infinity;
    constants[at + REACH_PER_M] = limited ? gain / sd : 0;
  });
  return constants;
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
 * @param open - running sum of the log ratio of any movement against standing, for the open tops of templates [nat]
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
  open: Float64Array | undefined,
): Float32Array {
  const { products, count, energies, maskedEnergies } = correlations;
  const cells = whitened.samples.length;
  const factors = new Float32Array(cells * count).fill(-Infinity);
  const lengths = Int32Array.from(bank.templates, (template) => template.cells);
  const opens = Int32Array.from(bank.templates, (template) => template.openFrom);
  const closes = Int32Array.from(bank.templates, (template) => template.openTo);
  const { counts, squares } = whitened;
  const tables = componentsOf.map(() => bank.templates.map((): (Float64Array | undefined)[] => []));
  const most = Math.max(...componentsOf.map((components) => components.length));
  const values = new Float64Array(most);
  for (let i = 0; i < cells; i++) {
    const components = componentsOf[spanOf[i]];
    const table = tables[spanOf[i]];
    const row = i * count;
    const limited = Number.isFinite(components[0].least);
    for (let k = 0; k < count; k++) {
      const length = lengths[k];
      if (i + length > cells) break;
      const full = energies[k];
      const energy = maskedEnergies === undefined ? full : maskedEnergies[row + k];
      let held = counts[i + length] - counts[i];
      let square = squares[i + length] - squares[i];
      let apart = 0;
      const openFrom = opens[k];
      const openTo = closes[k];
      if (openTo > openFrom) {
        held -= counts[i + openTo] - counts[i + openFrom];
        square -= squares[i + openTo] - squares[i + openFrom];
        apart = open === undefined ? 0 : open[i + openTo] - open[i + openFrom];
      }
      const step = Math.min(ENERGY_STEPS, Math.round((ENERGY_STEPS * energy) / full));
      if (step === 0 || held === 0) {
        factors[row + k] = 0;
        continue;
      }
      const constants = (table[k][step] ??= constantsOf(
        components,
        (full * step) / ENERGY_STEPS,
        full,
        length,
        noiseVariance,
      ));
      const rise = products[row + k] / energy;
      // a clear fall is no rise: the prior holds nothing there, and its tail would cost most of the time
      if (limited && rise < -0.5 * components[0].level) continue;
      const left = Math.max(0, square - rise * rise * energy);
      let highest = -Infinity;
      for (let c = 0, at = 0; c < components.length; c++, at += NUMBERS) {
        const offset = rise - constants[at + LEVEL];
        const variance = constants[at + VARIANCE];
        // a residual that a nearer shape explains says nothing for one that is further off
        if (c > 1 && limited && left < 1.2 * held * constants[VARIANCE]) {
          values[c] = -Infinity;
          continue;
        }
        let value = constants[at + BASE] - offset * offset * constants[at + HALF_TOTAL] - (0.5 * left) / variance;
        value -= held * constants[at + GROWTH];
        if (value > highest - 20) {
          const reach = constants[at + REACH] + constants[at + REACH_PER_M] * rise;
          if (reach < 5) value += logNormalCdf(reach);
        }
        values[c] = value;
        if (value > highest) highest = value;
      }
      let sum = 0;
      for (let c = 0; c < components.length; c++) {
        const gap = values[c] - highest;
        if (gap > -20) sum += gap === 0 ? 1 : Math.exp(gap);
      }
      factors[row + k] = highest + (sum === 1 ? 0 : Math.log(sum)) + (0.5 * square) / noiseVariance + apart;
    }
  }
  return factors;
}
