import { z } from 'zod';
import { uuidPattern } from '../decode/uuid.ts';
import { packetLayout } from './layout-schema.ts';
import { hexBytes, streamLayout } from './stream-schema.ts';

const uuid = z.string().regex(uuidPattern).meta({ id: 'uuid', description: '128 bits in lower case, with hyphens' });

const write = z.strictObject({
  characteristic: uuid,
  bytes: hexBytes,
  service: uuid.exactOptional().meta({ description: 'that of the link when left out' }),
});

const nominalRateHz = z
  .number()
  .positive()
  .nullable()
  .meta({ description: 'samples a second as the maker tells; null when it is not known' });

const bluetooth = z.strictObject({
  kind: z.literal('bluetooth'),
  service: uuid,
  namePrefix: z
    .string()
    .min(1)
    .exactOptional()
    .meta({ description: 'how the advertised name begins, where the service is not advertised' }),
  characteristics: z
    .array(
      z.strictObject({
        characteristic: uuid,
        service: uuid.exactOptional().meta({ description: 'that of the link when left out' }),
        nominalRateHz,
        packets: z
          .array(packetLayout)
          .min(1)
          .meta({ description: 'more than one where packets of several kinds come: a constant tells them apart' }),
      }),
    )
    .min(1),
  start: z.array(write).meta({ description: 'written in this order once notifications are on' }),
  stop: z.array(write),
});

const serial = z.strictObject({
  kind: z.literal('serial'),
  port: z.strictObject({
    baudRate: z.int().positive(),
    dataBits: z.literal([7, 8]),
    stopBits: z.literal([1, 2]),
    parity: z.enum(['none', 'even', 'odd']),
  }),
  nominalRateHz,
  stream: streamLayout,
  start: z.array(hexBytes),
  stop: z.array(hexBytes),
});

/** What the JSON of a sensor's description holds. */
export const sensorDocument = z
  .strictObject({
    kind: z.literal('surae-sensor'),
    version: z.literal(1),
    name: z.string().min(1),
    placement: z
      .enum(['heel', 'foot', 'trunk', 'platform', 'inline'])
      .nullable()
      .meta({ description: 'where it is worn or stands; null when it may be anywhere. A hint: the page asks' }),
    notes: z.string().exactOptional(),
    link: z.discriminatedUnion('kind', [bluetooth, serial]),
  })
  .meta({ title: 'Surae sensor', description: 'How a sensor is reached, started and read' });

export type SensorDocument = z.infer<typeof sensorDocument>;
/** A sensor that is reached by Bluetooth, or by a serial port. */
export type BluetoothLink = z.infer<typeof bluetooth>;
export type SerialLink = z.infer<typeof serial>;

/** The JSON Schema (draft 2020-12) of the document. */
export function sensorJsonSchema(): Record<string, unknown> {
  return z.toJSONSchema(sensorDocument);
}
