import { z } from 'zod';
import { latestVersion, recordingMigrations } from './migrations.ts';
import { placements, quantities, sides } from './quantities.ts';

const packedNumbers = z
  .strictObject({
    encoding: z.literal('float64-le-base64'),
    count: z.int().min(0),
    data: z.string().meta({ contentEncoding: 'base64' }),
  })
  .meta({ id: 'numbers', description: 'IEEE 754 doubles, little-endian, in base64' });

const unit = z
  .strictObject({ source: z.string().min(1), si: z.string().min(1) })
  .meta({ id: 'unit', description: 'UCUM codes: the unit of the file, and the SI unit of the numbers here' });

const channel = z.strictObject({
  quantity: z.enum(quantities),
  axis: z.enum(['x', 'y', 'z']).nullable(),
  samples: packedNumbers,
  unit,
  column: z.string().meta({ description: 'name of the column in the file' }),
  side: z.enum(sides).exactOptional(),
  placementDeclared: z.enum(placements).exactOptional(),
  placementDetected: z.enum(placements).exactOptional(),
});

const group = z.strictObject({
  timesS: packedNumbers.meta({ description: 'native sample times, strictly rising' }),
  timeUnit: unit,
  channels: z.array(channel).min(1),
});

/** What the JSON of a recording holds at the present version. Gaps follow from the times and are not written. */
export const recordingDocument = z
  .strictObject({
    kind: z.literal('surae-recording'),
    version: z.literal(latestVersion(recordingMigrations)),
    source: z.strictObject({
      sha256: z.string().regex(/^[0-9a-f]{64}$/),
      byteLength: z.int().min(0),
      bytes: z.string().meta({ contentEncoding: 'base64', description: 'the untouched file' }).exactOptional(),
    }),
    groups: z.array(group).min(1),
    deviceNotes: z.array(z.string()),
    unusedColumns: z.array(z.strictObject({ column: z.string(), reason: z.enum(['unknown-name', 'no-axis']) })),
  })
  .meta({ title: 'Surae recording', description: 'One recording: numbers in SI with their own times' });

export type RecordingDocument = z.infer<typeof recordingDocument>;

/** The JSON Schema (draft 2020-12) of the document. */
export function recordingJsonSchema(): Record<string, unknown> {
  return z.toJSONSchema(recordingDocument);
}
