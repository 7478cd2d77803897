import { readBits } from './bits.ts';
import type {
  ChannelNature,
  CounterNature,
  Decoded,
  DecodedChannel,
  Decoder,
  MissingCause,
  MissingValue,
  RefusalCode,
  TimeNature,
} from './decoder.ts';
import type { PacketLayout, TimeField } from './layout.ts';
import { readNumber } from './number-code.ts';
import { channelBit, type PacketPlan, type PlannedChannel, type PlannedField, planPacket } from './packet-plan.ts';
import { applyFactor, factorOf, factorToSi } from './units.ts';

/**
 * The reader of packets of one layout.
 *
 * @throws {@link PacketError} when the layout cannot be used
 */
export function packetDecoder(layout: PacketLayout): Decoder {
  return new PacketDecoder(planPacket(layout));
}

/** What was read of a packet before its samples. */
interface Reading {
  counter: number | null;
  timeS: number | null;
  count: number | null;
}

class PacketDecoder implements Decoder {
  readonly channels: readonly ChannelNature[];
  readonly sentUnits: readonly string[];
  readonly counter: CounterNature | null;
  readonly time: TimeNature | null;
  private readonly plan: PacketPlan;

  constructor(plan: PacketPlan) {
    this.plan = plan;
    this.channels = plan.channels.map(({ nature }) => nature);
    this.sentUnits = plan.channels.map(({ sentUnit }) => sentUnit);
    const fields = [...plan.before, ...plan.after];
    const counter = fields.find((field) => field.kind === 'counter');
    const time = fields.find((field) => field.kind === 'time');
    this.counter = counter === undefined ? null : { counts: counter.counts, modulus: 2 ** counter.parts.bits };
    this.time = time === undefined ? null : timeNature(time);
  }

  decode(bytes: Uint8Array): Decoded {
    const { plan } = this;
    const reading: Reading = { counter: null, timeS: null, count: null };
    const refuse = (code: RefusalCode, atByte: number, expected: string, actual: string): Decoded => {
      const { counter, timeS } = reading;
      return { kind: 'refused', code, atByte, expected, actual, counter, timeS };
    };
    const readFields = (fields: readonly PlannedField[], fromBit: number): Decoded | undefined => {
      let atBit = fromBit;
      for (const field of fields) {
        if (atBit + field.parts.bits > 8 * bytes.length) {
          const atLeast = Math.ceil((plan.beforeBits + plan.afterBits) / 8);
          return refuse('too-short', bytes.length, `at least ${atLeast} bytes`, counted(bytes.length));
        }
        const found = readField(field, bytes, atBit, reading);
        if (found !== undefined)
          return refuse('other-kind', atBit >>> 3, `${field.kind} ${found.expected}`, found.actual);
        atBit += field.parts.bits;
      }
      return undefined;
    };

    const refusedBefore = readFields(plan.before, 0);
    if (refusedBefore !== undefined) return refusedBefore;
    const count = this.countOf(bytes, reading);
    const bits = plan.beforeBits + count * plan.sampleBits + plan.afterBits;
    const length = Math.ceil(bits / 8);
    if (bytes.length < length) {
      const expected = `${plan.repeat === 'fill' ? 'at least ' : ''}${counted(length)}`;
      return refuse('too-short', bytes.length, expected, counted(bytes.length));
    }
    if (bytes.length > length) {
      const expected = plan.repeat === 'fill' ? `whole samples, such as ${counted(length)}` : counted(length);
      return refuse('too-long', length, expected, counted(bytes.length));
    }
    const refusedAfter = readFields(plan.after, bits - plan.afterBits);
    if (refusedAfter !== undefined) return refusedAfter;
    const channels = plan.channels.map((channel) => readChannel(plan, channel, count, bytes));
    return { kind: 'packet', counter: reading.counter, timeS: reading.timeS, sampleCount: count, channels };
  }

  /** How many samples a packet must hold; at least one where they fill it. */
  private countOf(bytes: Uint8Array, { count }: Reading): number {
    const { repeat, beforeBits, afterBits, sampleBits } = this.plan;
    if (repeat === 'count') return count ?? 0;
    if (repeat !== 'fill') return repeat;
    return Math.max(1, Math.floor((8 * bytes.length - beforeBits - afterBits) / sampleBits));
  }
}

function timeNature({ unit, scale = 1, marks = 'first', parts }: TimeField & PlannedField): TimeNature {
  const isFloat = parts.kind === 'float';
  const inSeconds = (codes: number): number =>
    applyFactor(applyFactor(codes, factorOf(scale)), factorToSi('time', unit)!);
  return { marks, stepS: isFloat ? null : inSeconds(1), periodS: isFloat ? null : inSeconds(2 ** parts.bits) };
}

/** Reads a field into what is known; says what differs when it is a constant that does. */
function readField(
  field: PlannedField,
  bytes: Uint8Array,
  atBit: number,
  reading: Reading,
): { expected: string; actual: string } | undefined {
  if (field.kind === 'skip') return undefined;
  const code = readNumber(bytes, atBit, field.parts, field.bitOrder);
  if (field.kind === 'constant' && code !== field.value) return { expected: `${field.value}`, actual: `${code}` };
  if (field.kind === 'counter') reading.counter = code;
  if (field.kind === 'count') reading.count = code;
  if (field.kind === 'time') {
    const timeS = applyFactor(applyFactor(code, factorOf(field.scale ?? 1)), factorToSi('time', field.unit)!);
    reading.timeS = Number.isFinite(timeS) ? timeS : null;
  }
  return undefined;
}

function readChannel(plan: PacketPlan, channel: PlannedChannel, count: number, bytes: Uint8Array): DecodedChannel {
  const values: (number | null)[] = [];
  const missing: MissingValue[] = [];
  for (let index = 0; index < count; index += 1) {
    const atBit = channelBit(plan, channel, index, count);
    const value = readValue(channel, bytes, atBit);
    const isMissing = typeof value === 'string';
    values.push(isMissing ? null : value);
    if (isMissing) missing.push({ index, cause: value, atByte: atBit >>> 3 });
  }
  return { values, missing };
}

function readValue(channel: PlannedChannel, bytes: Uint8Array, atBit: number): number | MissingCause {
  const { form, order, notKnown, scale, offset, toSi } = channel;
  if (notKnown.length > 0 && notKnown.includes(readBits(bytes, atBit, form.bits, order))) return 'not-known';
  const code = readNumber(bytes, atBit, form, order);
  const value = applyFactor(applyFactor(code, scale) + offset, toSi);
  return Number.isFinite(value) ? value : 'not-finite';
}

const counted = (count: number): string => (count === 1 ? '1 byte' : `${count} bytes`);
