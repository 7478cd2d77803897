import type { SensorQuantity } from '../quantity.ts';

/** What a channel holds once it is decoded. */
export interface ChannelNature {
  readonly quantity: SensorQuantity;
  readonly axis: 'x' | 'y' | 'z' | null;
  /** UCUM code of the SI unit of the values */
  readonly unit: string;
}

/** A counter that comes with every packet. */
export interface CounterNature {
  /** what it is the number of: this packet, or the first sample in it */
  readonly counts: 'packets' | 'samples';
  /** after this less one comes 0; null when it never begins again */
  readonly modulus: number | null;
}

/** A clock of the device that comes with every packet. */
export interface TimeNature {
  /** which sample of the packet it is the time of */
  readonly marks: 'first' | 'last';
  /** one step of it; null where steps are not even [s] */
  readonly stepS: number | null;
  /** after so long it begins again at 0; null when it never does [s] */
  readonly periodS: number | null;
}

/** Why a sample has no value. */
export type MissingCause =
  /** the sensor sent its code for a value that it does not know */
  | 'not-known'
  /** NaN, infinity, or too large to hold */
  | 'not-finite'
  /** nothing between two delimiters */
  | 'empty'
  /** text where a number is needed */
  | 'not-a-number';

export interface MissingValue {
  /** which sample of the packet, from 0 */
  readonly index: number;
  readonly cause: MissingCause;
  /** where it begins in the packet, from 0 */
  readonly atByte: number;
}

export interface DecodedChannel {
  /** SI; null where the sensor sent no value, and then the cause is in `missing` */
  readonly values: readonly (number | null)[];
  /** in the order of the samples */
  readonly missing: readonly MissingValue[];
}

/** What a packet held. */
export interface DecodedPacket {
  readonly kind: 'packet';
  /** as it came, not unwrapped; null when the packet has none */
  readonly counter: number | null;
  /** as it came, not unwrapped; null when the packet has none or it was no finite number [s] */
  readonly timeS: number | null;
  readonly sampleCount: number;
  /** in the order of the channels of the decoder, each as long as `sampleCount` */
  readonly channels: readonly DecodedChannel[];
}

/** Why a packet could not be read. */
export type RefusalCode =
  /** it ends too early */
  | 'too-short'
  /** it goes on after its end */
  | 'too-long'
  /** it is of another kind or version: a constant differs */
  | 'other-kind'
  /** text that has more or fewer fields than it should */
  | 'wrong-fields';

/** A packet that could not be read: its bytes are the caller's to keep. */
export interface RefusedPacket {
  readonly kind: 'refused';
  readonly code: RefusalCode;
  /** where in the packet, from 0 */
  readonly atByte: number;
  readonly expected: string;
  readonly actual: string;
  /** as far as it could be read before the fault, so that what is missing can be told; else null */
  readonly counter: number | null;
  /** likewise [s] */
  readonly timeS: number | null;
}

/** Text of a sensor that holds no samples: a header, a comment, an empty line. */
export interface DecodedNote {
  readonly kind: 'note';
  readonly text: string;
}

export type Decoded = DecodedPacket | RefusedPacket | DecodedNote;

/** Reads packets of one kind. It remembers nothing: a packet means the same whenever it comes. */
export interface Decoder {
  readonly channels: readonly ChannelNature[];
  /** UCUM code of the unit in which each channel is sent, before it becomes SI */
  readonly sentUnits: readonly string[];
  /** null: nothing that was lost on the way can be told from the packets */
  readonly counter: CounterNature | null;
  /** null: the time of a sample is when it arrived, and no better */
  readonly time: TimeNature | null;
  /** Never throws, whatever the bytes. */
  decode(bytes: Uint8Array): Decoded;
}
