import { z } from 'zod';
import { kinds } from './kinds.ts';

/** What stands around every body. */
const envelope = z
  .strictObject({
    id: z
      .string()
      .regex(/^[0-9a-f]{32}$/)
      .meta({ description: '128 random bits' }),
    kind: z.string().min(1),
    schema: z.int().min(1).meta({ description: 'version of the shape of the body' }),
    about: z.string().min(1).nullable().meta({ description: 'the document that it is about; a sensor by its name' }),
    author: z.string().min(1).meta({ description: 'code of who wrote it' }),
    at: z.iso.datetime({ offset: true }).meta({ description: 'when, with offset from UTC' }),
    body: z.json(),
    sequence: z.int().min(1).meta({ description: 'place in the order in which the store took it' }),
    hash: z
      .string()
      .regex(/^[0-9a-f]{64}$/)
      .meta({ description: 'SHA-256 of the canonical JSON of everything else but the sequence' }),
  })
  .meta({
    title: 'Surae document',
    description: 'One entry of the record. It never changes; a correction is a new one',
  });

/** The JSON Schema (draft 2020-12) of a document: what stands around its body, and the body by kind and version. */
export function documentJsonSchema(): Record<string, unknown> {
  const bodies = kinds.flatMap(({ kind, versions }) =>
    versions.map((body, place) => ({ name: `${kind}-${place + 1}`, kind, schema: place + 1, body })),
  );
  const definition = (body: z.ZodType): Record<string, unknown> => {
    // it is said once, at the top
    const entries = Object.entries(z.toJSONSchema(body, { io: 'input' }));
    return Object.fromEntries(entries.filter(([key]) => key !== '$schema'));
  };
  return {
    ...z.toJSONSchema(envelope, { io: 'input' }),
    allOf: bodies.map(({ name, kind, schema }) => ({
      if: { properties: { kind: { const: kind }, schema: { const: schema } } },
      then: { properties: { body: { $ref: `#/$defs/${name}` } } },
    })),
    $defs: Object.fromEntries(bodies.map(({ name, body }) => [name, definition(body)])),
  };
}
