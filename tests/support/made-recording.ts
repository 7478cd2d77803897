import { type MadePull, madeSamples, rampEffort } from './made-pull.ts';

/** A made recording of pulls as text under the documented header. */
export function madeRecording(pull: MadePull, column = 'force [N]'): string {
  const { timesS, samples } = madeSamples(pull);
  const rows = [...timesS].map((timeS, i) => `${timeS.toFixed(5)},${samples[i].toFixed(3)}`);
  return `time [s],${column}\n${rows.join('\n')}\n`;
}

/** Ramps of these heights, held for four seconds each, over a load at rest. */
export function madeRamps(heights: readonly number[], restN = 85, sampleRateHz = 200): MadePull {
  return {
    efforts: heights.map((height, k) => rampEffort(4 + 12 * k, height, 2, 4)),
    lengthS: 6 + 12 * heights.length,
    sampleRateHz,
    noise: 0.5,
    rest: () => restN,
  };
}
