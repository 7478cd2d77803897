import type { Whitening } from './sway-noise.ts';

/** Whitened departures beyond this many units count less and less. */
const softness = 3;

/** Walks through samples in time order and whitens departures with their derivatives. */
export interface Innovations {
  /** whitened derivatives of the sample looked at last [1/unit of parameter] */
  readonly white: Float64Array;
  /**
   * takes in one sample by its index: departure and its derivatives; returns the whitened departure. Only the first `size`
   * parameters are looked at; the others must have had no slope so far.
   */
  readonly take: (i: number, departure: number, slopes: Float64Array, size: number) => number;
}

/**
 * What each sample tells that those before it did not, and how that depends on the parameters of a fit.
 *
 * @param whitening - gains and scales of the stretch [-, 1/m]
 * @param total - number of parameters [-]
 * @returns a walk from the first sample on [-]
 *
 * Source: Kalman (1960), J Basic Eng 82:35-45
 */
export function innovations(whitening: Whitening, total: number): Innovations {
  const inner = new Float64Array(total);
  const sway = new Float64Array(total);
  const white = new Float64Array(total);
  const { decay, passed, innerGain, swayGain, scale } = whitening;
  let [levelInner, levelSway] = [0, 0];
  const take = (i: number, departure: number, slopes: Float64Array, size: number): number => {
    const [gain, swaysGain, unit] = [innerGain[i], swayGain[i], scale[i]];
    const surprise = departure - levelSway;
    levelInner += gain * surprise;
    levelSway = passed * levelInner + decay * (levelSway + swaysGain * surprise);
    levelInner *= decay;
    for (let a = 0; a < size; a++) {
      const fresh = slopes[a] - sway[a];
      const stage = inner[a] + gain * fresh;
      sway[a] = passed * stage + decay * (sway[a] + swaysGain * fresh);
      inner[a] = decay * stage;
      white[a] = fresh * unit;
    }
    return surprise * unit;
  };
  return { white, take };
}

/**
 * Root by which a large departure counts less: 1 for none, then growing in proportion.
 *
 * @param squared - square of the departure in standard deviations [-]
 * @returns root, at least 1; a departure weighs its inverse [-]
 *
 * Source: Triggs et al. (2000), Vision Algorithms, LNCS 1883:298-372 (soft-L1)
 */
export function softRoot(squared: number): number {
  return Math.sqrt(1 + squared / (softness * softness));
}

/**
 * Misfit that belongs to a root: about the squared departure where it is small, its size where it is large.
 *
 * @param root - from {@link softRoot} [-]
 * @returns -2 log-likelihood up to a constant [-]
 *
 * Source: Triggs et al. (2000), Vision Algorithms, LNCS 1883:298-372 (soft-L1)
 */
export function softMisfit(root: number): number {
  return 2 * softness * softness * (root - 1);
}
