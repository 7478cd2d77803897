import { z } from 'zod';
import { dateOrders } from '../form/date-order.ts';
import { encodings } from '../form/encoding.ts';
import { fieldDelimiters } from '../form/split-fields.ts';
import { timeUnits } from '../guess/time-guess.ts';
import { placements, quantities, sides } from '../quantities.ts';

/** The version that this software writes. */
export const RECIPE_VERSION = 1;

const fieldKinds = ['number', 'time-of-day', 'date-time', 'instant', 'word', 'passed-over'] as const;
const index = z.int().min(0).max(9999);
const fields = z.array(z.string().max(500)).min(1).max(10_000);

/** How files of one kind are read: how their text is written, and what each column holds. */
export const recipeDocument = z
  .strictObject({
    kind: z.literal('surae-recipe'),
    version: z.literal(RECIPE_VERSION),
    /** what people call it */
    name: z.string().min(1).max(200),
    /** SHA-256 of what a file must have to fit: see `recipeFingerprint` */
    fits: z.string().regex(/^[0-9a-f]{64}$/),
    encoding: z.enum(encodings),
    delimiter: z.enum(fieldDelimiters),
    decimalMark: z.enum(['.', ',']),
    thousandsMark: z.enum(['.', ',', ' ', "'"]).nullable(),
    /** how dates are read that can be read in several orders; absent where there are none */
    dates: z.enum(dateOrders).exactOptional(),
    /** names as the header spells them, each behind its group where there are groups; null for files without a header */
    header: fields.nullable(),
    /** the row of groups right above the names, as it is in the file; absent where there is none */
    groupRow: fields.exactOptional(),
    /** the row of units below it */
    unitRow: fields.nullable(),
    /** what stands in the fields of each column */
    fields: z.array(z.enum(fieldKinds)).min(1).max(10_000),
    /** texts, in lower case, that stand where a value is missing: a gap, never a zero */
    missing: z.array(z.string().max(40)).max(100),
    /** what the first line below the rows begins with; empty where rows go on to the end of the file */
    footer: z.array(z.string().min(1).max(80)).max(20),
    /** what becomes of a last line without a line end: it may have been cut */
    openEnd: z.enum(['refused', 'left-out', 'read']),
    time: z.strictObject({
      /** null where rows are counted */
      column: index.nullable(),
      unit: z.enum(timeUnits),
      /** samples a second, where rows are counted; null while nobody knows it */
      rateHz: z.number().min(10).max(2000).nullable(),
      /** columns of times that hold the same numbers in every row, one for each group; absent where there is no second one */
      alike: z.array(index).min(2).max(200).exactOptional(),
    }),
    columns: z
      .array(
        z.strictObject({
          column: index,
          quantity: z.enum(quantities),
          axis: z.enum(['x', 'y', 'z']).nullable(),
          /** code in UCUM */
          unit: z.string().min(1).max(40),
          side: z.enum(sides).nullable(),
          placement: z.enum(placements).nullable(),
        }),
      )
      .min(1)
      .max(200),
    /** the column that tells whose row it is */
    people: index.nullable(),
  })
  .meta({
    id: 'surae-recipe',
    description: 'How files of one kind are read into recordings. Columns are counted from 0.',
  });

export type Recipe = z.infer<typeof recipeDocument>;

/** The JSON Schema of a recipe. */
export function recipeJsonSchema(): unknown {
  return z.toJSONSchema(recipeDocument);
}
