import type { BitOrder } from './bits.ts';
import { bitsOf, checkLayout } from './check-layout.ts';
import type { ChannelNature } from './decoder.ts';
import { type FormParts, formParts } from './form.ts';
import type { ChannelField, PacketField, PacketLayout, SamplesField } from './layout.ts';
import { PacketError } from './packet-error.ts';
import { type Factor, factorOf, factorToSi, siUnitOf } from './units.ts';

/** A field that is no sample, with its form taken apart. */
export type PlannedField = Exclude<PacketField, SamplesField> & {
  readonly parts: FormParts;
  readonly bitOrder: BitOrder;
};

export interface PlannedChannel {
  readonly nature: ChannelNature;
  /** UCUM code of the unit in which it is sent */
  readonly sentUnit: string;
  readonly form: FormParts;
  readonly order: BitOrder;
  /** bits of one sample that come before it */
  readonly bitsBefore: number;
  /** from code to unit */
  readonly scale: Factor;
  /** in the unit */
  readonly offset: number;
  /** from unit to SI */
  readonly toSi: Factor;
  /** codes without sign that stand for no value */
  readonly notKnown: readonly number[];
}

/** A layout that was checked, ready for reading and writing. */
export interface PacketPlan {
  readonly before: readonly PlannedField[];
  readonly beforeBits: number;
  readonly repeat: SamplesField['repeat'];
  readonly byChannel: boolean;
  readonly channels: readonly PlannedChannel[];
  /** bits of one sample of all channels */
  readonly sampleBits: number;
  readonly after: readonly PlannedField[];
  readonly afterBits: number;
}

/** @throws {@link PacketError} with everything that is wrong in the layout */
export function planPacket(layout: PacketLayout): PacketPlan {
  const problems = checkLayout(layout);
  if (problems.length > 0) throw new PacketError(problems);
  const samplesAt = layout.fields.findIndex(({ kind }) => kind === 'samples');
  const { repeat, arrangement, values } = layout.fields[samplesAt] as SamplesField;
  const channels: PlannedChannel[] = [];
  let sampleBits = 0;
  for (const value of values) {
    if (value.kind === 'channel') channels.push(planChannel(value, layout.order, sampleBits));
    sampleBits += bitsOf(value);
  }
  const before = planFields(layout.fields.slice(0, samplesAt), layout.order);
  const after = planFields(layout.fields.slice(samplesAt + 1), layout.order);
  const sum = (fields: readonly PlannedField[]): number => fields.reduce((bits, { parts }) => bits + parts.bits, 0);
  const byChannel = arrangement === 'by-channel';
  return { before, beforeBits: sum(before), repeat, byChannel, channels, sampleBits, after, afterBits: sum(after) };
}

/** Bit at which a channel of a sample begins, where there are `count` samples. */
export function channelBit(
  plan: PacketPlan,
  { bitsBefore, form }: PlannedChannel,
  index: number,
  count: number,
): number {
  const inSamples = plan.byChannel ? count * bitsBefore + index * form.bits : index * plan.sampleBits + bitsBefore;
  return plan.beforeBits + inSamples;
}

function planFields(fields: readonly PacketField[], order: BitOrder): PlannedField[] {
  return fields.flatMap((field): PlannedField[] => {
    if (field.kind === 'samples') return [];
    if (field.kind === 'skip') return [{ ...field, parts: { kind: 'unsigned', bits: field.bits }, bitOrder: order }];
    return [{ ...field, parts: formParts(field.form)!, bitOrder: field.order ?? order }];
  });
}

function planChannel(field: ChannelField, order: BitOrder, bitsBefore: number): PlannedChannel {
  const { quantity, axis, unit, scale = 1, offset = 0, notKnown = [] } = field;
  return {
    nature: { quantity, axis, unit: siUnitOf(quantity) },
    sentUnit: unit,
    form: formParts(field.form)!,
    order: field.order ?? order,
    bitsBefore,
    scale: factorOf(scale),
    offset,
    toSi: factorToSi(quantity, unit)!,
    notKnown: notKnown.map(Number),
  };
}
