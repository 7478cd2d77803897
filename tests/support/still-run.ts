import { createRandom, gaussian } from '../../packages/analysis/src/signal/random.ts';

/** A stretch at a level with white noise: `samples[i] = level + slope t + noise`. */
export function stillRun(options: {
  readonly seconds: number;
  readonly rateHz?: number;
  readonly level?: number;
  readonly noise?: number;
  readonly slopePerS?: number;
  readonly seed?: number;
  readonly fromS?: number;
}): { timesS: Float64Array; samples: Float64Array } {
  const { seconds, rateHz = 100, level = 0, noise = 0, slopePerS = 0, seed = 1, fromS = 0 } = options;
  const random = createRandom(seed);
  const count = Math.round(seconds * rateHz) + 1;
  const timesS = Float64Array.from({ length: count }, (_, i) => fromS + i / rateHz);
  const samples = timesS.map((timeS) => level + slopePerS * (timeS - fromS) + noise * gaussian(random));
  return { timesS, samples };
}

/** Stretches one after the other, as masses are hung: a second of movement lies between two. */
export function hungRun(
  levels: readonly number[],
  noise: number,
  seed = 1,
  seconds = 3,
): { timesS: Float64Array; samples: Float64Array } {
  const rateHz = 100;
  const parts = levels.flatMap((level, k) => {
    const still = stillRun({ seconds, rateHz, level, noise, seed: seed + k }).samples;
    if (k === levels.length - 1) return [...still];
    const swing = Array.from({ length: rateHz }, (_, i) => {
      const share = i / rateHz;
      return level + (levels[k + 1] - level) * share + 40 * Math.sin(12 * Math.PI * share) * (1 - share);
    });
    return [...still, ...swing];
  });
  return { timesS: Float64Array.from(parts, (_, i) => i / rateHz), samples: Float64Array.from(parts) };
}
