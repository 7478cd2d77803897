import type { SensorQuantity } from '../quantity.ts';
import type { BitOrder } from './bits.ts';
import type { NumberForm } from './form.ts';

/** A unit of time: UCUM codes. */
export type TimeUnit = 's' | 'ms' | 'us' | 'ns';

interface OfField {
  /** which end of the number comes first, where it differs from the packet; may change at the start of a byte only */
  readonly order?: BitOrder;
}

/** A number that is always the same, such as a version: a packet with another one is of another kind. */
export interface ConstantField extends OfField {
  readonly kind: 'constant';
  readonly form: NumberForm;
  readonly value: number;
}

/** A number that rises from packet to packet and begins again at 0 after the greatest that its form holds. */
export interface CounterField extends OfField {
  readonly kind: 'counter';
  readonly form: NumberForm;
  /** what it is the number of: this packet, or the first sample in it */
  readonly counts: 'packets' | 'samples';
}

/** The clock of the device: `code * scale` in `unit`. An integer begins again at 0 after the greatest that its form holds. */
export interface TimeField extends OfField {
  readonly kind: 'time';
  readonly form: NumberForm;
  readonly unit: TimeUnit;
  /** 1 when left out; such as 0.000030517578125 with unit s for a clock of 32768 Hz */
  readonly scale?: number;
  /** which sample of the packet it is the time of; the first when left out */
  readonly marks?: 'first' | 'last';
}

/** How many samples the packet holds. */
export interface CountField extends OfField {
  readonly kind: 'count';
  readonly form: NumberForm;
}

/** Bits that nobody needs. */
export interface SkipField {
  readonly kind: 'skip';
  readonly bits: number;
}

/** One number of a sample: `(code * scale + offset)` in `unit`. */
export interface ChannelField extends OfField {
  readonly kind: 'channel';
  readonly form: NumberForm;
  readonly quantity: SensorQuantity;
  readonly axis: 'x' | 'y' | 'z' | null;
  /** UCUM code */
  readonly unit: string;
  /** 1 when left out; a negative one turns the direction round */
  readonly scale?: number;
  /** 0 when left out, in the unit */
  readonly offset?: number;
  /** codes of an integer that mean that the value is not known: the bits as they stand, such as `0x7FFFFFFF` */
  readonly notKnown?: readonly string[];
}

/** The samples of a packet. */
export interface SamplesField {
  readonly kind: 'samples';
  /** how many: always so many, as many as the count field says, or as many as fit */
  readonly repeat: number | 'count' | 'fill';
  /** `by-sample`: all numbers of the first sample, then all of the next; `by-channel`: all of one channel, then of the next */
  readonly arrangement?: 'by-sample' | 'by-channel';
  readonly values: readonly (ChannelField | SkipField)[];
}

export type PacketField = ConstantField | CounterField | TimeField | CountField | SkipField | SamplesField;

/** How the bytes of one packet are to be read: plain data, in the order of the bytes. */
export interface PacketLayout {
  /** which end of a number comes first, and of a byte where numbers are no whole bytes */
  readonly order: BitOrder;
  readonly fields: readonly PacketField[];
}
