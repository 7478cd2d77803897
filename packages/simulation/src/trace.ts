/** One column of samples in SI units; same shape as the analysis expects. */
export interface SimulatedChannel {
  readonly quantity: 'force' | 'heel-height' | 'acceleration' | 'angular-velocity';
  readonly axis: 'x' | 'y' | 'z' | null;
  readonly samples: Float64Array;
}

/** Channels with one clock. */
export interface SimulatedGroup {
  readonly timesS: Float64Array;
  readonly channels: readonly SimulatedChannel[];
}

/** A simulated recording. */
export interface SimulatedTrace {
  readonly groups: readonly SimulatedGroup[];
}

const axes = ['x', 'y', 'z'] as const;

/**
 * Channels x, y, z of a vector quantity.
 *
 * @param quantity - what the vector is [-]
 * @param samples - three columns [SI]
 * @returns three channels [SI]
 *
 * Source: definition
 */
export function vectorChannels(
  quantity: 'acceleration' | 'angular-velocity',
  samples: readonly Float64Array[],
): SimulatedChannel[] {
  return axes.map((axis, index) => ({ quantity, axis, samples: samples[index] }));
}
