import {
  type AdoptedCharacteristic,
  type BluetoothLink,
  type ChannelNature,
  type Decoder,
  decodedFeed,
  decodersOf,
  type FeedNature,
  kindFeed,
  type OpenSensor,
  openLayout,
  type PacketFeed,
  type PacketLayout,
  packetDecoder,
} from '@surae/sensors';

/** Samples of one clock that a sensor sends: where they come from, what they are, and how they are read. */
export interface SampleReading {
  /** which stream of the link they come from */
  readonly stream: number;
  readonly channels: readonly ChannelNature[];
  /** UCUM code of the unit in which each of them is sent */
  readonly sentUnits: readonly string[];
  /** samples a second by the word of the maker; null when nobody says [Hz] */
  readonly nominalRateHz: number | null;
  /** a feed remembers nothing, so one is made for each recording */
  readonly makeFeed: () => PacketFeed;
}

/** How many samples each packet of a layout holds; null when their number differs. */
function samplesIn({ fields }: PacketLayout): number | null {
  const samples = fields.find(({ kind }) => kind === 'samples');
  return samples?.kind === 'samples' && typeof samples.repeat === 'number' ? samples.repeat : null;
}

/** One for each kind of packet of each characteristic, in the order of the description. */
export function describedReadings({ characteristics }: BluetoothLink): SampleReading[] {
  return characteristics.flatMap((characteristic, stream) => {
    const decoders = decodersOf(characteristic);
    return characteristic.packets.map((layout, which): SampleReading => {
      const { nominalRateHz } = characteristic;
      const nature = { nominalRateHz, samplesPerPacket: samplesIn(layout) };
      const { channels, sentUnits } = decoders[which]!;
      return { stream, channels, sentUnits, nominalRateHz, makeFeed: () => kindFeed(decoders, which, nature) };
    });
  });
}

function readingOf(decoder: Decoder, nature: FeedNature): SampleReading {
  const { nominalRateHz } = nature;
  const { channels, sentUnits } = decoder;
  return { stream: 0, channels, sentUnits, nominalRateHz, makeFeed: () => decodedFeed(decoder, nature) };
}

/** The samples of a sensor that says itself what they are. */
export function openReading(sensor: OpenSensor): SampleReading {
  const { nominalRateHz } = sensor;
  return readingOf(packetDecoder(openLayout(sensor)), { nominalRateHz, samplesPerPacket: null });
}

/** The samples of an adopted characteristic: nobody tells their rate, and no number comes with them. */
export function adoptedReading({ layout }: AdoptedCharacteristic): SampleReading {
  return readingOf(packetDecoder(layout), { nominalRateHz: null, samplesPerPacket: 1 });
}

/** The samples of a serial stream, once it is known what they are. */
export function streamReading(
  decoder: Decoder,
  nominalRateHz: number | null,
  samplesPerPacket: number | null,
): SampleReading {
  return readingOf(decoder, { nominalRateHz, samplesPerPacket });
}
