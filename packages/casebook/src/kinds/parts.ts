import { CRITERION_IDS, END_REASON_SENTENCES, type EndReason } from '@surae/shared';
import { z } from 'zod';

// Parts that several bodies are made of. Objects of released kinds are loose: what a document holds beyond them stays in it.

export const side = z.enum(['left', 'right']);

/** Id of another document or of a stream. */
export const id = z.string().min(1);

/** A whole number on a scale from 0 to 10; null was not asked. */
export const zeroToTen = z.int().min(0).max(10).nullable();

/** A day by the calendar of the place. */
export const day = z.iso.date();

/** Short text that somebody typed; null where nothing was. */
export const note = z.string().min(1).max(2000).nullable();

export const finite = z.number();

/** With a UCUM code as its unit; null is none. */
export const load = z.strictObject({ value: finite.positive(), unit: z.string().min(1) }).nullable();

export const oneOrBoth = z.enum(['left', 'right', 'both']);

/** How many, at least one; null was not told. */
export const count = z.int().min(1).nullable();

export const endReason = z.enum(Object.keys(END_REASON_SENTENCES) as [EndReason, ...EndReason[]]);

export const criterion = z.enum(CRITERION_IDS as readonly [string, ...string[]]);

/** Plain JSON of any shape. */
export const json = z.json();

/** The same asked of each leg. */
export function ofLegs<Answer extends z.ZodType>(
  answer: Answer,
): z.ZodObject<{ left: Answer; right: Answer }, z.core.$loose> {
  return z.looseObject({ left: answer, right: answer });
}
