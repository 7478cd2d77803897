import type { SampleBlock } from '@surae/sensors';

/** Samples of a force, 10 ms apart. */
export function forceBlock(
  firstIndex: number,
  fromS: number,
  forces: readonly number[],
  isLate = false,
  hostTimeMs = 1000,
): SampleBlock {
  return {
    firstIndex,
    deviceTimesS: Float64Array.from(forces, (_, i) => fromS + i / 100),
    hostTimeMs,
    channels: [{ quantity: 'force', axis: null, unit: 'N', samples: Float64Array.from(forces) }],
    ...(isLate ? { isLate: true } : {}),
  };
}
