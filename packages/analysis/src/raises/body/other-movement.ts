import type { BodySettings } from './settings.ts';
import type { Whitened } from './whitening.ts';

/** Sizes of movement that is no repetition, as multiples of the noise [-]. */
const SMALL = 5;
const LARGE = 25;

/**
 * Log likelihood of other movement against standing still, for each cell.
 *
 * Other movement is broad white noise of unknown size: an even mixture of a small, a large and a step-like one.
 *
 * @param whitened - prediction errors of the acceleration [m/s2]
 * @param noiseVariance - of standing, > 0 [m2/s4]
 * @param settings - acceleration of steps [m/s2]
 * @returns log ratio of each cell; 0 where it holds no data [nat]
 *
 * Source: ours
 */
export function otherMovementRatio(whitened: Whitened, noiseVariance: number, settings: BodySettings): Float64Array {
  const { samples, present } = whitened;
  const step = Math.max(settings.otherAcceleration ** 2, LARGE * LARGE * noiseVariance);
  const variances = [SMALL * SMALL * noiseVariance, LARGE * LARGE * noiseVariance, step];
  const ratio = new Float64Array(samples.length);
  for (let i = 0; i < samples.length; i++) {
    if (present[i] === 0) continue;
    const square = samples[i] * samples[i];
    let sum = 0;
    for (const variance of variances) sum += Math.exp(-square / (2 * variance)) / Math.sqrt(variance);
    const other = Math.log(Math.max(sum / 3, 1e-300));
    ratio[i] = other + 0.5 * Math.log(noiseVariance) + square / (2 * noiseVariance);
  }
  return ratio;
}
