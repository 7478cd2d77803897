import { type OpenChannel, type OpenForm, type OpenSensor, openVersion } from './open-packet.ts';
import { PacketError, type Problem } from './packet-error.ts';

/** Codes by their place, from 1 on; 0 stands for no axis. */
const quantities = ['force', 'heel-height', 'acceleration', 'angular-velocity', 'torque', 'angle'] as const;
const axes = [null, 'x', 'y', 'z'] as const;
const forms: readonly OpenForm[] = ['i16', 'i24', 'i32', 'f32'];

/** Bytes before the channels, and of each channel. */
const headBytes = 6;
const channelBytes = 8;
/** As many as quantities and axes there are to tell apart. */
const mostChannels = quantities.length * axes.length;

/** What a sensor says of itself, or why it cannot be understood. */
export type AboutAnswer =
  | { readonly kind: 'sensor'; readonly sensor: OpenSensor }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

/** What the bytes that a sensor tells about its open packets mean. Never throws; places are bytes, from 0. */
export function readOpenAbout(bytes: Uint8Array): AboutAnswer {
  const problems: Problem[] = [];
  const report = (atByte: number, expected: string, actual: string): void => {
    problems.push({ path: `byte ${atByte}`, expected, actual });
  };
  const refused = (): AboutAnswer => ({ kind: 'refused', problems });
  if (bytes.length < headBytes) report(bytes.length, `at least ${headBytes} bytes`, `${bytes.length}`);
  else if (bytes[0] !== openVersion) report(0, `version ${openVersion}`, `${bytes[0]}`);
  if (problems.length > 0) return refused();

  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  const count = view.getUint8(1);
  if (count < 1 || count > mostChannels) report(1, `1 to ${mostChannels} channels`, `${count}`);
  const length = headBytes + channelBytes * count;
  if (bytes.length !== length) report(Math.min(length, bytes.length), `${length} bytes`, `${bytes.length}`);
  if (problems.length > 0) return refused();

  const milliHertz = view.getUint32(2, true);
  const channels = Array.from({ length: count }, (_, index): OpenChannel => {
    const at = headBytes + channelBytes * index;
    const named = <T>(list: readonly T[], offset: number, what: string, first: number): T => {
      const code = view.getUint8(at + offset);
      const found = list[code - first];
      if (found === undefined) report(at + offset, `${what} ${first} to ${first + list.length - 1}`, `${code}`);
      return found ?? list[0]!;
    };
    const mantissa = view.getInt32(at + 4, true);
    if (mantissa === 0) report(at + 4, 'a scale other than 0', '0');
    return {
      quantity: named(quantities, 0, 'quantity', 1),
      axis: named(axes, 1, 'axis', 0),
      form: named(forms, 2, 'form', 1),
      exponent: view.getInt8(at + 3),
      mantissa,
    };
  });
  for (const [index, { quantity, axis }] of channels.entries()) {
    const first = channels.findIndex((other) => other.quantity === quantity && other.axis === axis);
    if (first < index && problems.length === 0) {
      report(headBytes + channelBytes * index, 'each quantity and axis once', `that of channel ${first} again`);
    }
  }
  if (problems.length > 0) return refused();
  return { kind: 'sensor', sensor: { nominalRateHz: milliHertz === 0 ? null : milliHertz / 1000, channels } };
}

/**
 * The bytes that a sensor tells about its open packets.
 *
 * @throws {@link PacketError} when they would not be understood again
 */
export function writeOpenAbout({ nominalRateHz, channels }: OpenSensor): Uint8Array {
  const bytes = new Uint8Array(headBytes + channelBytes * channels.length);
  const view = new DataView(bytes.buffer);
  view.setUint8(0, openVersion);
  view.setUint8(1, channels.length);
  view.setUint32(2, Math.round((nominalRateHz ?? 0) * 1000), true);
  for (const [index, { quantity, axis, form, exponent, mantissa }] of channels.entries()) {
    const at = headBytes + channelBytes * index;
    view.setUint8(at, 1 + quantities.indexOf(quantity));
    view.setUint8(at + 1, axes.indexOf(axis));
    view.setUint8(at + 2, 1 + forms.indexOf(form));
    view.setInt8(at + 3, exponent);
    view.setInt32(at + 4, mantissa, true);
  }
  const answer = readOpenAbout(bytes);
  if (answer.kind === 'refused') throw new PacketError(answer.problems);
  return bytes;
}
