import type { Bank } from './bank.ts';
import { type Whitened, whitenTemplate } from './whitening.ts';

/** Inner products of the whitened signal with each template at each cell, and the templates' energies. */
export interface Correlations {
  /** product of template k begun at cell i, at i * count + k; 0 where it would run over the end [m2/s4 per m] */
  readonly products: Float32Array;
  readonly count: number;
  /** energy of each template for a rise of 1 m [m2/s4 per m2] */
  readonly energies: Float64Array;
  /** energy on the cells that hold data, laid out like products; undefined when no cell is absent */
  readonly maskedEnergies: Float32Array | undefined;
}

/**
 * Inner products of a whitened signal with every template at every place.
 *
 * @param whitened - prediction errors of the acceleration [m/s2]
 * @param bank - templates [m/s2 per m]
 * @param coefficients - of the prediction, applied to the templates too [-]
 * @returns products and energies, see {@link Correlations} [m2/s4]
 *
 * Source: definition (matched filter)
 */
export function correlate(whitened: Whitened, bank: Bank, coefficients: Float64Array): Correlations {
  const count = bank.templates.length;
  const cells = whitened.samples.length;
  const shapes = bank.templates.map((template) =>
    whitenTemplate(template.acceleration, coefficients).fill(0, template.openFrom, template.openTo),
  );
  const energies = Float64Array.from(shapes, (shape) => shape.reduce((sum, value) => sum + value * value, 0));
  const products = new Float32Array(cells * count);
  const masked = whitened.complete ? undefined : new Float32Array(cells * count);
  const samples = whitened.samples;
  for (let i = 0; i < cells; i++) {
    for (let k = 0; k < count; k++) {
      const shape = shapes[k];
      const length = shape.length;
      if (i + length > cells) break; // templates are sorted by length
      let sum = 0;
      for (let j = 0; j < length; j++) sum += samples[i + j] * shape[j];
      products[i * count + k] = sum;
      if (masked === undefined) continue;
      let energy = energies[k];
      if (whitened.counts[i + length] - whitened.counts[i] < length) {
        energy = 0;
        for (let j = 0; j < length; j++) energy += whitened.present[i + j] * shape[j] * shape[j];
      }
      masked[i * count + k] = energy;
    }
  }
  return { products, count, energies, maskedEnergies: masked };
}
