import type { Migration } from '@surae/records';
import { z } from 'zod';
import { wordsOnly } from '../plan/words-only.ts';
import { count, day, finite, load, note, oneOrBoth, zeroToTen } from './parts.ts';

/** Version 1: a line of words with a dose. */
const first = {
  what: z.string().min(1),
  side: oneOrBoth,
  load,
  sets: count,
  repetitions: count,
  perWeek: finite.positive().nullable(),
  from: day,
  until: day.nullable(),
  proposedBy: z.string().min(1).nullable(),
  decision: z.enum(['accepted', 'changed', 'declined']),
  why: note,
};

const description = 'What is to be done, as the clinician decided; units are UCUM codes';

const planItem1 = z.strictObject(first).meta({ title: 'Plan item', description });

/** Codes of the shared lists; one that a newer version added is kept, and shown by its words. */
const code = z
  .string()
  .regex(/^[a-z0-9][a-z0-9-]{0,39}$/)
  .nullable();

const tempo = z
  .strictObject({ upS: finite.min(0).nullable(), topS: finite.min(0).nullable(), downS: finite.min(0).nullable() })
  .nullable();

const run = z
  .strictObject({
    /** of one session, by time or by way; 0 is no running for now */
    mostS: finite.min(0).nullable(),
    mostM: finite.min(0).nullable(),
    /** days without a run between two */
    daysBetween: z.int().min(0).nullable(),
    /** running and walking in turn; null is running alone */
    runS: finite.positive().nullable(),
    walkS: finite.positive().nullable(),
  })
  .refine(({ mostS, mostM }) => (mostS === null) !== (mostM === null), 'expected a limit by time or by way')
  .nullable();

const goneOver = z.array(z.strictObject({ rule: z.string().min(1), reason: z.string().min(1).max(2000) }));

/** Version 2: an exercise, a limit for runs, a line of advice, or words as in version 1. */
export const planItem2 = z
  .strictObject({
    ...first,
    of: z.enum(['exercise', 'running', 'advice', 'words']),
    /** of an exercise or a line of advice; null for runs and words */
    code,
    tempo,
    holdS: finite.positive().nullable(),
    /** between two sets */
    restS: finite.min(0).nullable(),
    /** lowest angle of the foot: 0 is level, below it the heel is lower than the toes */
    lowestFootDeg: finite.min(-90).max(90).nullable(),
    /** pain up to which it is gone on with, of 10 */
    painLimit: zeroToTen,
    run,
    /** rules that stood against it, and why the clinician went over each */
    goneOver,
  })
  .refine((item) => (item.of === 'running') === (item.run !== null), 'expected a limit for runs, and for nothing else')
  .refine(
    (item) => (item.of === 'exercise' || item.of === 'advice') === (item.code !== null),
    'expected a code for an exercise or advice, and for nothing else',
  )
  .meta({ title: 'Plan item', description });

const migrations: readonly Migration[] = [
  {
    id: 1,
    name: 'a line of words stays one: no exercise is read into it',
    up: (document) => ({ ...document, body: { ...(document['body'] as object), ...wordsOnly } }),
  },
];

/** The kind of document, without its name. */
export const planItemKind = { versions: [planItem1, planItem2], migrations } as const;
