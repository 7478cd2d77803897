import { formParts, integerRange } from './form.ts';
import type { ChannelField, PacketLayout } from './layout.ts';
import { siUnitOf } from './units.ts';

/** Service of sensors that send the open packet, drawn at random for this software; shared/sensors/open-packet.md tells builders. */
export const openService = 'ebf0d72e-6a39-4170-9695-90fb5a971e33';
/** Characteristic that notifies of samples. */
export const openSamples = '5acefc72-029a-4f0c-8101-80224bf7c443';
/** Characteristic that tells, when it is read, what the samples are. */
export const openAbout = '1ea68fea-fe9c-4262-9ef8-cd0315066b62';

/** The version of the open packet that this software reads and writes. */
export const openVersion = 1;

/** How an open packet writes a number. */
export type OpenForm = 'i16' | 'i24' | 'i32' | 'f32';

/** One channel of an open packet: `code * mantissa * 10^exponent` in the SI unit of the quantity. */
export interface OpenChannel {
  readonly quantity: ChannelField['quantity'];
  readonly axis: ChannelField['axis'];
  readonly form: OpenForm;
  /** not 0; a negative one turns the direction round */
  readonly mantissa: number;
  readonly exponent: number;
}

/** What a sensor says of itself. */
export interface OpenSensor {
  /** samples a second, to a thousandth [Hz]; null when it does not say */
  readonly nominalRateHz: number | null;
  readonly channels: readonly OpenChannel[];
}

/** Bytes before the samples: version, counter, time, count. */
const headerBytes = 8;

/**
 * The layout of the open packets of a sensor: version, number of the first sample (16 bits), its time by the device in
 * microseconds (32 bits), number of samples, samples. The greatest code of an integer stands for a value that is not known.
 */
export function openLayout({ channels }: OpenSensor): PacketLayout {
  return {
    order: 'little',
    fields: [
      { kind: 'constant', form: 'u8', value: openVersion },
      { kind: 'counter', form: 'u16', counts: 'samples' },
      { kind: 'time', form: 'u32', unit: 'us', marks: 'first' },
      { kind: 'count', form: 'u8' },
      { kind: 'samples', repeat: 'count', values: channels.map(channelField) },
    ],
  };
}

/** How many samples fit into a packet of so many bytes, 255 at most; 20 bytes fit through any Bluetooth link. */
export function openSampleCount({ channels }: OpenSensor, packetBytes: number): number {
  const sampleBytes = channels.reduce((sum, { form }) => sum + formParts(form)!.bits / 8, 0);
  return Math.max(0, Math.min(255, Math.floor((packetBytes - headerBytes) / sampleBytes)));
}

function channelField({ quantity, axis, form, mantissa, exponent }: OpenChannel): ChannelField {
  // read as a decimal, so that 1e-3 is the double nearest to a thousandth
  const scale = Number(`${mantissa}e${exponent}`);
  const field = { kind: 'channel', form, quantity, axis, unit: siUnitOf(quantity), scale } as const;
  const parts = formParts(form)!;
  return parts.kind === 'float' ? field : { ...field, notKnown: [`0x${integerRange(parts).greatest.toString(16)}`] };
}
