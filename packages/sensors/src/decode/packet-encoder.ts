import { writeBits } from './bits.ts';
import { integerRange } from './form.ts';
import type { PacketLayout } from './layout.ts';
import { writeNumber } from './number-code.ts';
import { PacketError } from './packet-error.ts';
import { channelBit, type PlannedChannel, type PlannedField, planPacket } from './packet-plan.ts';
import { factorOf, factorToSi, undoFactor } from './units.ts';

/** What a packet is to hold. */
export interface PacketContent {
  /** any whole number from 0 on: it is taken modulo what the form holds; 0 when left out */
  readonly counter?: number;
  /** from 0 on, likewise; 0 when left out [s] */
  readonly timeS?: number;
  /** SI, as many of each channel; null is written as the code for a value that is not known */
  readonly channels: readonly (readonly (number | null)[])[];
}

/** Writes packets of one layout, for people who build a sensor and for simulated ones. */
export type PacketEncoder = (content: PacketContent) => Uint8Array;

/**
 * The writer of packets of one layout: the inverse of its decoder. A value is rounded to the nearest code. Skipped bits are 0.
 *
 * @throws {@link PacketError} when the layout cannot be used; the writer throws it when values do not fit
 */
export function packetEncoder(layout: PacketLayout): PacketEncoder {
  const plan = planPacket(layout);
  return ({ counter = 0, timeS = 0, channels }) => {
    const count = channels[0]?.length ?? 0;
    checkShape(channels, plan.channels.length, count, plan.repeat);
    const bytes = new Uint8Array(Math.ceil((plan.beforeBits + count * plan.sampleBits + plan.afterBits) / 8));
    const writeFields = (fields: readonly PlannedField[], fromBit: number): void => {
      let atBit = fromBit;
      for (const field of fields) {
        const code = codeOf(field, counter, timeS, count);
        if (field.kind !== 'skip') writeNumber(bytes, atBit, field.parts, field.bitOrder, code);
        atBit += field.parts.bits;
      }
    };
    writeFields(plan.before, 0);
    writeFields(plan.after, plan.beforeBits + count * plan.sampleBits);
    for (const [c, channel] of plan.channels.entries()) {
      for (const [index, value] of channels[c]!.entries()) {
        writeValue(bytes, channelBit(plan, channel, index, count), channel, value, `channels[${c}][${index}]`);
      }
    }
    return bytes;
  };
}

function checkShape(channels: PacketContent['channels'], wanted: number, count: number, repeat: number | string): void {
  if (channels.length !== wanted) fail('channels', `${wanted} channels`, `${channels.length}`);
  const odd = channels.findIndex(({ length }) => length !== count);
  if (odd >= 0) fail(`channels[${odd}]`, `${count} samples, as the first channel`, `${channels[odd]!.length}`);
  if (typeof repeat === 'number' && count !== repeat) fail('channels[0]', `${repeat} samples`, `${count}`);
  if (repeat === 'fill' && count === 0) fail('channels[0]', 'at least one sample', 'none');
}

function codeOf(field: PlannedField, counter: number, timeS: number, count: number): number {
  const modulus = 2 ** field.parts.bits;
  if (field.kind === 'constant') return field.value;
  if (field.kind === 'counter') return counter % modulus;
  if (field.kind === 'count')
    return count < modulus ? count : fail('channels[0]', `below ${modulus} samples`, `${count}`);
  if (field.kind !== 'time') return 0;
  const code = undoFactor(undoFactor(timeS, factorToSi('time', field.unit)!), factorOf(field.scale ?? 1));
  return field.parts.kind === 'float' ? code : Math.round(code) % modulus;
}

function writeValue(
  bytes: Uint8Array,
  atBit: number,
  channel: PlannedChannel,
  value: number | null,
  path: string,
): void {
  const { form, order, scale, offset, toSi, notKnown } = channel;
  if (value === null) {
    const [code] = notKnown;
    if (form.kind === 'float') writeNumber(bytes, atBit, form, order, NaN);
    else if (code === undefined) fail(path, 'a value, as the layout has no code for one that is not known', 'null');
    else writeBits(bytes, atBit, form.bits, order, code);
    return;
  }
  const exact = undoFactor(undoFactor(value, toSi) - offset, scale);
  if (form.kind === 'float') return writeNumber(bytes, atBit, form, order, exact);
  const code = Math.round(exact);
  const { least, greatest } = integerRange(form);
  const pattern = code < 0 ? code + 2 ** form.bits : code;
  if (!(code >= least && code <= greatest) || notKnown.includes(pattern)) {
    fail(
      path,
      `a value whose code is ${least} to ${greatest} and does not stand for "not known"`,
      `${value} (${code})`,
    );
  }
  writeNumber(bytes, atBit, form, order, code);
}

function fail(path: string, expected: string, actual: string): never {
  throw new PacketError([{ path, expected, actual }]);
}
