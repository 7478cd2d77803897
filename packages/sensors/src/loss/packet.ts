import type { BlockChannel } from '../block.ts';

/** What one packet of a sensor says, whatever its bytes looked like. Its samples follow one another without a hole. */
export interface StreamPacket {
  /** number of the packet, or of its first sample, as it was sent: it begins again at 0 after its last; null without one */
  readonly counter: number | null;
  /** time of the first sample by the clock of the device, as it was sent: it begins again at 0 too; null without one [ticks] */
  readonly deviceTicks: number | null;
  /** when it arrived, by the clock of the host [ms] */
  readonly hostTimeMs: number;
  /** all channels in step, as many samples in each */
  readonly channels: readonly BlockChannel[];
  /** samples of the packet that carry no value, by their place in it, rising; what stands in the channels there is nothing */
  readonly withoutValue?: readonly number[];
}

/** A counter that begins again at 0. */
export interface PacketCounter {
  readonly counts: 'packets' | 'samples';
  /** how many values it has, a power of two as a rule [-] */
  readonly modulus: number;
}

/** A clock that is sent along and begins again at 0. */
export interface PacketTicks {
  /** how many values it has [ticks] */
  readonly modulus: number;
  /** length of one tick [s] */
  readonly tickS: number;
}

/** How the packets of a sensor are numbered and timed. */
export interface PacketNumbering {
  readonly counter: PacketCounter | null;
  readonly ticks: PacketTicks | null;
  /** samples in every packet; null when their number differs from packet to packet */
  readonly samplesPerPacket: number | null;
  /** samples a second by the word of its maker [Hz]; null when nobody says, and then it is measured first */
  readonly nominalRateHz: number | null;
}
