import type { Rhythm } from './rhythm.ts';
import type { BodySettings } from './settings.ts';
import { repetitionTemplate } from './template.ts';
import { whitenTemplate } from './whitening.ts';

/** Durations that are asked about, each longer by this than the one before [-]; ours. */
const STEP = 1.05;

/**
 * How many slow repetitions could hide in a recording in which none was found: as many as fit in of the quickest that the
 * sway buries, none when even the slowest would have shown.
 *
 * @param rhythm - with the noise that was learnt [m2/s4]
 * @param cells - length of the recording on the model grid [-]
 * @param settings - rate of the model grid, the slow repetitions that are asked about, least ratio that shows [Hz, s, m, -]
 * @returns number of repetitions that cannot be ruled out [-]
 *
 * Source: North (1963), Proc IEEE 51:1016-1027 (signal-to-noise ratio of a matched filter)
 */
export function hiddenRepetitions(rhythm: Rhythm, cells: number, settings: BodySettings): number {
  const { modelRateHz, slowDurationS, slowestDurationS, slowRiseM, slowHoldShare, leastRatio } = settings;
  for (let durationS = slowDurationS; durationS <= slowestDurationS; durationS *= STEP) {
    const template = repetitionTemplate({ durationS, holdShare: slowHoldShare, fallRatio: 1 }, modelRateHz);
    const whitened = whitenTemplate(template.acceleration, rhythm.noiseCoefficients);
    const energy = whitened.reduce((sum, value) => sum + value * value, 0);
    const ratio = slowRiseM * Math.sqrt(energy / rhythm.noiseVariance);
    if (ratio < leastRatio) return Math.floor(cells / modelRateHz / durationS);
  }
  return 0;
}
