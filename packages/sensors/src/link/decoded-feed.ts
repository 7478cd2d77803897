import type { BlockChannel } from '../block.ts';
import type { CounterNature, DecodedPacket, Decoder, TimeNature } from '../decode/decoder.ts';
import type { PacketCounter, PacketNumbering, PacketTicks, StreamPacket } from '../loss/packet.ts';
import type { PacketFeed } from './packet-feed.ts';

/** What a decoder does not know of its packets. */
export interface FeedNature {
  /** samples a second by the word of the maker; null when nobody says [Hz] */
  readonly nominalRateHz: number | null;
  /** samples in every packet; null when their number differs */
  readonly samplesPerPacket: number | null;
}

/** A number that never begins again: more than will ever be counted, and whole numbers up to it are exact. */
const never = 2 ** 52;

/** A clock whose steps are not even is read to a millionth of a second. */
const finestTickS = 1e-6;

/** The packets of a decoder as a stream takes them; one that lacks the number it is placed by is refused. */
export function decodedFeed(decoder: Decoder, { nominalRateHz, samplesPerPacket }: FeedNature): PacketFeed {
  const ticks = ticksOf(decoder.time);
  const numbering: PacketNumbering = { counter: counterOf(decoder.counter), ticks, samplesPerPacket, nominalRateHz };
  const marksLast = decoder.time?.marks === 'last' && nominalRateHz !== null;
  const read = (packet: DecodedPacket, hostTimeMs: number): StreamPacket | undefined => {
    const { counter, timeS, sampleCount } = packet;
    if (numbering.counter !== null && counter === null) return undefined;
    if (numbering.counter === null && ticks !== null && timeS === null) return undefined;
    const backS = marksLast ? (sampleCount - 1) / nominalRateHz : 0;
    return {
      counter: numbering.counter === null ? null : counter,
      deviceTicks:
        ticks === null || timeS === null ? null : modulo(Math.round((timeS - backS) / ticks.tickS), ticks.modulus),
      hostTimeMs,
      ...samplesOf(decoder, packet),
    };
  };
  return {
    numbering,
    read(bytes, hostTimeMs) {
      const decoded = decoder.decode(bytes);
      if (decoded.kind === 'note') return { packets: [], refusedCount: 0 };
      const packet = decoded.kind === 'packet' ? read(decoded, hostTimeMs) : undefined;
      return packet === undefined ? { packets: [], refusedCount: 1 } : { packets: [packet], refusedCount: 0 };
    },
  };
}

function counterOf(counter: CounterNature | null): PacketCounter | null {
  return counter && { counts: counter.counts, modulus: counter.modulus ?? never };
}

function ticksOf(time: TimeNature | null): PacketTicks | null {
  if (time === null) return null;
  const tickS = time.stepS ?? finestTickS;
  return { tickS, modulus: time.periodS === null ? never : Math.round(time.periodS / tickS) };
}

/** All channels in step: a sample that one of them lacks has no value. */
function samplesOf(decoder: Decoder, packet: DecodedPacket): Pick<StreamPacket, 'channels' | 'withoutValue'> {
  const without = new Set(packet.channels.flatMap(({ missing }) => missing.map(({ index }) => index)));
  const channels = decoder.channels.map(
    ({ quantity, axis, unit }, k): BlockChannel => ({
      quantity,
      axis,
      unit,
      samples: Float64Array.from(packet.channels[k]?.values ?? [], (value) => value ?? 0),
    }),
  );
  return { channels, ...(without.size > 0 ? { withoutValue: [...without].sort((a, b) => a - b) } : {}) };
}

function modulo(value: number, modulus: number): number {
  return value - modulus * Math.floor(value / modulus);
}
