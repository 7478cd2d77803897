import type { Rhythm } from './rhythm.ts';
import type { BodySettings } from './settings.ts';
import { repetitionTemplate } from './template.ts';
import { whitenTemplate } from './whitening.ts';

/**
 * How many slow repetitions could hide in a recording in which none was found: as many as fit in when the sway buries
 * them, none when they would have shown.
 *
 * @param rhythm - with the noise that was learnt [m2/s4]
 * @param cells - length of the recording on the model grid [-]
 * @param settings - rate of the model grid, the slow repetition that is asked about, least ratio that shows [Hz, s, m, -]
 * @returns number of repetitions that cannot be ruled out [-]
 *
 * Source: North (1963), Proc IEEE 51:1016-1027 (signal-to-noise ratio of a matched filter)
 */
export function hiddenRepetitions(rhythm: Rhythm, cells: number, settings: BodySettings): number {
  const { slowDurationS, slowRiseM, slowHoldShare, leastRatio } = settings;
  const shape = { durationS: slowDurationS, holdShare: slowHoldShare, fallRatio: 1 };
  const template = repetitionTemplate(shape, settings.modelRateHz);
  const whitened = whitenTemplate(template.acceleration, rhythm.noiseCoefficients);
  const energy = whitened.reduce((sum, value) => sum + value * value, 0);
  const ratio = slowRiseM * Math.sqrt(energy / rhythm.noiseVariance);
  return ratio >= leastRatio ? 0 : Math.floor(cells / settings.modelRateHz / slowDurationS);
}
