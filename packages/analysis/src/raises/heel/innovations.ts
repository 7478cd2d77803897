import type { Whitening } from './sway-noise.ts';

/** Whitened departures beyond this many units count less and less. */
const softness = 3;

/**
 * What each sample tells that those before it did not.
 *
 * @param whitening - gains and scales of the stretch [-, 1/m]
 * @param departures - of each sample from what is expected of it [m]
 * @param white - receives the whitened departures [-]
 *
 * Source: Kalman (1960), J Basic Eng 82:35-45
 */
export function whiten(whitening: Whitening, departures: Float64Array, white: Float64Array): void {
  const { decay, passed, innerGain, swayGain, scale } = whitening;
  let inner = 0;
  let sway = 0;
  for (let i = 0; i < departures.length; i++) {
    const fresh = departures[i] - sway;
    const stage = inner + innerGain[i] * fresh;
    sway = passed * stage + decay * (sway + swayGain[i] * fresh);
    inner = decay * stage;
    white[i] = fresh * scale[i];
  }
}

/**
 * The same for four columns at once, in place: how the whitened departures depend on four parameters of a fit. Four walks side by
 * side take hardly longer than one, since none waits for another.
 *
 * @param whitening - gains and scales of the stretch [-, 1/m]
 * @param columns - derivatives of the departures, column after column [m/unit of parameter]
 * @param first - the first of the four columns [-]
 * @param from - sample before which all four are 0 [index]
 *
 * Source: Kalman (1960), J Basic Eng 82:35-45
 */
export function whitenFour(whitening: Whitening, columns: Float64Array, first: number, from: number): void {
  const { decay, passed, innerGain, swayGain, scale } = whitening;
  const count = scale.length;
  let innerA = 0;
  let innerB = 0;
  let innerC = 0;
  let innerD = 0;
  let swayA = 0;
  let swayB = 0;
  let swayC = 0;
  let swayD = 0;
  for (let i = from; i < count; i++) {
    const gain = innerGain[i];
    const swaysGain = swayGain[i];
    const unit = scale[i];
    const a = first * count + i;
    const b = a + count;
    const c = b + count;
    const d = c + count;
    const freshA = columns[a] - swayA;
    const freshB = columns[b] - swayB;
    const freshC = columns[c] - swayC;
    const freshD = columns[d] - swayD;
    const stageA = innerA + gain * freshA;
    const stageB = innerB + gain * freshB;
    const stageC = innerC + gain * freshC;
    const stageD = innerD + gain * freshD;
    swayA = passed * stageA + decay * (swayA + swaysGain * freshA);
    swayB = passed * stageB + decay * (swayB + swaysGain * freshB);
    swayC = passed * stageC + decay * (swayC + swaysGain * freshC);
    swayD = passed * stageD + decay * (swayD + swaysGain * freshD);
    innerA = decay * stageA;
    innerB = decay * stageB;
    innerC = decay * stageC;
    innerD = decay * stageD;
    columns[a] = freshA * unit;
    columns[b] = freshB * unit;
    columns[c] = freshC * unit;
    columns[d] = freshD * unit;
  }
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
