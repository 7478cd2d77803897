import type { Rhythm } from './rhythm.ts';
import type { BodySettings } from './settings.ts';
import { repetitionTemplate } from './template.ts';
import { whitenTemplate } from './whitening.ts';

/** A slow repetition of a short foot: 3 s, 40 mm, a tenth of it held; ours. */
const SLOW = { durationS: 3, holdShare: 0.1, fallRatio: 1 };
const SLOW_RISE_M = 0.04;

/** A signal below four standard deviations is not found reliably among the hundreds of places it may have; ours. */
const LEAST_RATIO = 4;

/**
 * How many slow repetitions could hide in a recording in which none was found: as many as fit in when the sway buries
 * them, none when they would have shown.
 *
 * @param rhythm - with the noise that was learnt [m2/s4]
 * @param cells - length of the recording on the model grid [-]
 * @param settings - rate of the model grid [Hz]
 * @returns number of repetitions that cannot be ruled out [-]
 *
 * Source: North (1963), Proc IEEE 51:1016-1027 (signal-to-noise ratio of a matched filter)
 */
export function hiddenRepetitions(rhythm: Rhythm, cells: number, settings: BodySettings): number {
  const template = repetitionTemplate(SLOW, settings.modelRateHz);
  const whitened = whitenTemplate(template.acceleration, rhythm.noiseCoefficients);
  const energy = whitened.reduce((sum, value) => sum + value * value, 0);
  const ratio = SLOW_RISE_M * Math.sqrt(energy / rhythm.noiseVariance);
  return ratio >= LEAST_RATIO ? 0 : Math.floor(cells / settings.modelRateHz / SLOW.durationS);
}
