import { z } from 'zod';
import { hexPattern } from '../decode/hex.ts';
import type { StreamLayout } from '../decode/stream-reader.ts';
import { axis, order, packetLayout, quantity, timeUnit, unit } from './layout-schema.ts';

/** Bytes in hexadecimal. */
export const hexBytes = z.string().regex(hexPattern).meta({ id: 'bytes', description: 'hexadecimal, such as A5 5A' });

const length = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('fixed'), bytes: z.int() }),
  z.strictObject({
    kind: z.literal('told'),
    form: z.enum(['u8', 'u16']),
    order,
    extra: z.int().exactOptional(),
    longest: z.int(),
  }),
]);

const frame = z.strictObject({
  marker: hexBytes,
  length,
  check: z
    .strictObject({
      kind: z.enum(['sum8', 'xor8', 'crc16-ccitt', 'crc16-xmodem', 'crc32']),
      order,
      covers: z.enum(['packet', 'length-and-packet', 'all']),
    })
    .nullable(),
});

const modulus = z.number().exactOptional().meta({ description: 'after this it begins again at 0' });
const scale = z.number().exactOptional();

const column = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('counter'), modulus }),
  z.strictObject({ kind: z.literal('time'), unit: timeUnit, scale, modulus }),
  z.strictObject({ kind: z.literal('channel'), quantity, axis, unit, scale, offset: z.number().exactOptional() }),
  z.strictObject({ kind: z.literal('skip') }),
]);

const lines = z.strictObject({
  delimiter: z.enum([',', ';', 'tab', 'blanks']),
  decimal: z.enum(['.', ',']),
  columns: z.union([z.literal('header'), z.array(column)]),
  greeting: z.string().exactOptional(),
});

/** How a serial stream is to be read, as JSON. */
export const streamLayout = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('frames'), frame, packet: packetLayout }),
    z.strictObject({ kind: z.literal('lines'), lines }),
  ])
  .meta({ id: 'stream' }) satisfies z.ZodType<StreamLayout>;
