import { z } from 'zod';

/** The version that this software writes. */
export const STUDY_VERSION = 1;

const words = z.string().min(1).max(2000);
const name = z.string().min(1).max(200);
/** a word that stands in tables and on command lines */
const code = z.string().regex(/^[a-z0-9][a-z0-9-]{0,59}$/);
const hash = z.string().regex(/^[0-9a-f]{64}$/);
const value = z.union([z.number(), z.string().max(200), z.null()]);

/** When a rule leaves a trial out. A figure that was not measured meets no rule on a figure. */
const rule = z.union([
  /** a number outside what it may be */
  z.strictObject({ column: name, below: z.number().exactOptional(), above: z.number().exactOptional() }),
  /** a word or a flag of the result, such as `gate.usable` */
  z.strictObject({
    column: name,
    is: z
      .array(z.union([z.string().max(200), z.boolean()]))
      .min(1)
      .max(50),
  }),
  /** a cell of the manifest */
  z.strictObject({ manifest: name, is: z.array(z.string().max(200)).min(1).max(50) }),
  /** an issue of the recording, by its code */
  z.strictObject({ issue: name }),
]);

/** What was declared before the data were looked at. */
export const studyDocument = z
  .strictObject({
    kind: z.literal('surae-study'),
    version: z.literal(STUDY_VERSION),
    title: name,
    question: words,
    /** the study file that this one takes the place of; null for the first */
    amends: z.strictObject({ study: hash, why: words }).nullable(),
    test: z.enum(['heel-raise', 'isometric', 'hop-series']),
    /** the protocol, and its parameters where they differ from it */
    protocol: z.strictObject({ id: name, parameters: z.record(name, value) }),
    /** settings of the analysis that differ from the usual ones, as in a settings file */
    settings: z.record(z.string(), z.unknown()),
    /** keys of columns of the table of the test */
    outcomes: z.strictObject({ primary: name, secondary: z.array(name).max(50) }),
    /** which recordings belong to it: each column of the manifest with the words that it may hold */
    trials: z.array(z.strictObject({ manifest: name, is: z.array(z.string().max(200)).min(1).max(200) })).max(20),
    comparison: z.strictObject({
      /** independent groups; or two visits, or both legs, of the same people */
      of: z.enum(['groups', 'visits', 'sides']),
      /** column of the manifest that says the group; null for visits and sides, which have columns of their own */
      manifest: name.nullable(),
      /** the difference is the first less the second, the ratio the first over the second */
      first: name,
      second: name,
      scale: z.enum(['difference', 'ratio']),
      /** how several trials of one person become one value; `only` refuses more than one */
      perPerson: z.enum(['only', 'mean', 'greatest', 'first']),
      level: z.number().gt(0.5).lt(1),
      /** a difference that is smaller does not matter; of a ratio a factor above 1; null: then no is never said */
      margin: z.number().gt(0).nullable(),
    }),
    exclusions: z.array(z.strictObject({ code, words, rule: rule.nullable() })).max(50),
    /** null where nothing is counted again by people */
    blinding: z
      .strictObject({
        seed: z.string().min(8).max(200),
        raters: z.array(code).min(1).max(50),
        /** share of the recordings that each rater is shown twice */
        repeatedShare: z.number().min(0).max(1),
        /** recordings between the two showings of one */
        leastBetween: z.int().min(0).max(1000),
      })
      .nullable(),
    /** choices that would have been as defensible, beside the declared one */
    choices: z.array(z.strictObject({ parameter: name, values: z.array(value).min(1).max(50), why: words })).max(20),
  })
  .meta({
    id: 'surae-study',
    description: 'What a study declares before its data are looked at.',
  });

export type StudyFile = z.infer<typeof studyDocument>;

/** Why a trial is left out, as it was declared. */
export type Exclusion = StudyFile['exclusions'][number];

export type ExclusionRule = NonNullable<Exclusion['rule']>;

export type PerPerson = StudyFile['comparison']['perPerson'];

/** The JSON Schema of a study file. */
export function studyJsonSchema(): unknown {
  return z.toJSONSchema(studyDocument);
}
