import type { Interval } from '../signal/intervals.ts';
import { mean, variance } from '../signal/moments.ts';

/** Body weight and its standard uncertainty. */
export interface BodyWeight {
  readonly weightN: number;
  readonly uncertaintyN: number;
}

/**
 * Body weight: the mean vertical force over a span at whose ends the body is at rest.
 *
 * Over such a span the impulse of the net force is zero, so its mean is the weight, standing or moving. The uncertainty
 * comes from the scatter of half-second means, which sway together within themselves and hardly beyond.
 *
 * @param force - vertical force on a regular grid [N]
 * @param sampleRateHz - of the grid, > 0 [Hz]
 * @param startS - time of the first sample [s]
 * @param span - from rest to rest [s]
 * @returns weight and standard uncertainty; undefined when the span holds less than a second [N]
 *
 * Source: definition (impulse and momentum); block means: Flyvbjerg and Petersen (1989), J Chem Phys 91:461
 */
export function bodyWeight(
  force: Float64Array,
  sampleRateHz: number,
  startS: number,
  span: Interval,
): BodyWeight | undefined {
  const from = Math.max(0, Math.ceil((span.fromS - startS) * sampleRateHz));
  const to = Math.min(force.length, Math.floor((span.toS - startS) * sampleRateHz));
  const block = Math.max(1, Math.round(sampleRateHz / 2));
  const blocks = Math.floor((to - from) / block);
  if (blocks < 2) return undefined;
  const means = Float64Array.from({ length: blocks }, (_, b) =>
    mean(force.subarray(from + b * block, from + (b + 1) * block)),
  );
  return { weightN: mean(force.subarray(from, to)), uncertaintyN: Math.sqrt(variance(means) / blocks) };
}
