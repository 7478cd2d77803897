import type { Gap } from './gaps.ts';
import type { Axis, Placement, Quantity, Side } from './quantities.ts';

/** The unit a channel came in and the SI unit it is held in, as UCUM codes. */
export interface ChannelUnit {
  readonly source: string;
  readonly si: string;
}

/** One column of samples in SI, as long as its group's times. */
export interface RecordedChannel {
  readonly quantity: Quantity;
  readonly axis: Axis;
  readonly samples: Float64Array;
  readonly unit: ChannelUnit;
  /** name of the column as the file spells it */
  readonly column: string;
  readonly side?: Side;
  /** where the tester said the sensor was */
  readonly placementDeclared?: Placement;
  /** where the signal says it was */
  readonly placementDetected?: Placement;
}

/** Channels that share one clock. */
export interface RecordedGroup {
  /** native sample times, strictly rising, uneven allowed [s] */
  readonly timesS: Float64Array;
  readonly timeUnit: ChannelUnit;
  readonly channels: readonly RecordedChannel[];
  readonly gaps: readonly Gap[];
}

/** The bytes that a recording was read from. */
export interface RawSource {
  /** SHA-256 of the untouched bytes, lower-case hexadecimal */
  readonly sha256: string;
  readonly byteLength: number;
  /** a copy of the untouched bytes, where they are kept with the recording */
  readonly bytes?: Uint8Array;
}

/** A column of the file that holds nothing known to this software. */
export interface UnusedColumn {
  readonly column: string;
  readonly reason: 'unknown-name' | 'no-axis';
}

/**
 * What was recorded, never changed after it was read: the numbers in SI on their own times, and where they came from.
 * It carries no name, no person and no result.
 */
export interface Recording {
  readonly source: RawSource;
  readonly groups: readonly RecordedGroup[];
  /** what the file says about the device: the comment lines above its header */
  readonly deviceNotes: readonly string[];
  readonly unusedColumns: readonly UnusedColumn[];
}

/** The same recording with every object and list in it frozen; typed arrays cannot be frozen and are left alone. */
export function freezeRecording(recording: Recording): Recording {
  const freeze = (value: unknown): void => {
    if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return;
    Object.freeze(value);
    for (const part of Object.values(value)) freeze(part);
  };
  freeze(recording);
  return recording;
}
