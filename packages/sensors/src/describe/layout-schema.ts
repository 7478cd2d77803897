import { z } from 'zod';
import { codePattern, formPattern, type NumberForm } from '../decode/form.ts';
import type { PacketLayout } from '../decode/layout.ts';

export const order = z.enum(['little', 'big']).meta({
  id: 'order',
  description:
    'which end of a number comes first; for bits: from the least significant of each byte up, or from the most significant down',
});

const form = z.string().regex(formPattern).meta({
  id: 'form',
  description: "u without sign, i two's complement, f IEEE 754, then the bits: u8, i24, u12, f32",
}) as unknown as z.ZodType<NumberForm>;

export const quantity = z
  .enum(['force', 'heel-height', 'acceleration', 'angular-velocity', 'torque', 'angle'])
  .meta({ id: 'quantity' });
export const axis = z.enum(['x', 'y', 'z']).nullable().meta({ id: 'axis' });
export const timeUnit = z.enum(['s', 'ms', 'us', 'ns']).meta({ id: 'time-unit' });
export const unit = z
  .string()
  .min(1)
  .meta({ id: 'unit', description: 'UCUM code of the unit that the sensor sends, such as N, [g], deg/s' });

const own = { order: order.exactOptional() };
const skip = z.strictObject({ kind: z.literal('skip'), bits: z.int().min(1) });

const channel = z.strictObject({
  kind: z.literal('channel'),
  form,
  quantity,
  axis,
  unit,
  scale: z
    .number()
    .exactOptional()
    .meta({ description: 'value = code * scale + offset, in the unit; 1 when left out' }),
  offset: z.number().exactOptional(),
  notKnown: z
    .array(z.string().regex(codePattern))
    .exactOptional()
    .meta({ description: 'codes that mean that the value is not known, the bits as they stand: 0x7FFF' }),
  ...own,
});

const field = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('constant'), form, value: z.int(), ...own }),
  z.strictObject({ kind: z.literal('counter'), form, counts: z.enum(['packets', 'samples']), ...own }),
  z.strictObject({
    kind: z.literal('time'),
    form,
    unit: timeUnit,
    scale: z.number().exactOptional(),
    marks: z.enum(['first', 'last']).exactOptional(),
    ...own,
  }),
  z.strictObject({ kind: z.literal('count'), form, ...own }),
  skip,
  z.strictObject({
    kind: z.literal('samples'),
    repeat: z.union([z.int().min(1), z.enum(['count', 'fill'])]),
    arrangement: z.enum(['by-sample', 'by-channel']).exactOptional(),
    values: z.array(z.discriminatedUnion('kind', [channel, skip])).min(1),
  }),
]);

/** How the bytes of a packet are to be read, as JSON. */
export const packetLayout = z.strictObject({ order, fields: z.array(field).min(1) }).meta({
  id: 'packet',
  description: 'the fields of one packet in the order of its bytes',
}) satisfies z.ZodType<PacketLayout>;
