import type { SourceQuantity } from './quantity.ts';

/** Samples of one quantity along one axis. */
export interface BlockChannel {
  readonly quantity: SourceQuantity;
  readonly axis: 'x' | 'y' | 'z' | null;
  /** UCUM code of the SI unit the samples are in */
  readonly unit: string;
  readonly samples: Float64Array;
}

/** Samples as they arrive: all channels of one clock, in step. */
export interface SampleBlock {
  /** number of the first sample since the sensor began; the next block follows without a hole unless samples were lost */
  readonly firstIndex: number;
  /** time of each sample by the clock of the device, strictly rising, from the start of the stream [s]; null when it has none */
  readonly deviceTimesS: Float64Array | null;
  /** when the block arrived, by the clock of the host [ms] */
  readonly hostTimeMs: number;
  readonly channels: readonly BlockChannel[];
  /** samples of an earlier place, which came when later ones had been handed on already */
  readonly isLate?: true;
}
