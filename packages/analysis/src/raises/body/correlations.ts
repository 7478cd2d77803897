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
  const samples = whitened.samples;
  // four places at once: the steps of one sum wait for each other, those of four do not
  for (let i = 0; i < cells; i += 4) {
    for (let k = 0; k < count; k++) {
      const shape = shapes[k];
      const length = shape.length;
      if (i + length > cells) break; // templates are sorted by length
      const at = i * count + k;
      if (i + 3 + length > cells) {
        for (let place = i; place + length <= cells; place++) {
          let sum = 0;
          for (let j = 0; j < length; j++) sum += samples[place + j] * shape[j];
          products[place * count + k] = sum;
        }
        continue;
      }
      let first = 0;
      let second = 0;
      let third = 0;
      let fourth = 0;
      for (let j = 0; j < length; j++) {
        const value = shape[j];
        first += samples[i + j] * value;
        second += samples[i + j + 1] * value;
        third += samples[i + j + 2] * value;
        fourth += samples[i + j + 3] * value;
      }
      products[at] = first;
      products[at + count] = second;
      products[at + 2 * count] = third;
      products[at + 3 * count] = fourth;
    }
  }
  const masked = whitened.complete ? undefined : maskedEnergies(whitened, shapes, energies);
  return { products, count, energies, maskedEnergies: masked };
}

/** Energy of each template on the cells that hold data, at each cell. */
function maskedEnergies(whitened: Whitened, shapes: readonly Float64Array[], energies: Float64Array): Float32Array {
  const { counts, present } = whitened;
  const cells = present.length;
  const count = shapes.length;
  const masked = new Float32Array(cells * count);
  for (let i = 0; i < cells; i++) {
    for (let k = 0; k < count; k++) {
      const shape = shapes[k];
      const length = shape.length;
      if (i + length > cells) break;
      let energy = energies[k];
      if (counts[i + length] - counts[i] < length) {
        energy = 0;
        for (let j = 0; j < length; j++) energy += present[i + j] * shape[j] * shape[j];
      }
      masked[i * count + k] = energy;
    }
  }
  return masked;
}
