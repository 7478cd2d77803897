import { migrateDocument } from '@surae/records';
import type { Json, StoredDocument } from '@surae/storage';
import type { z } from 'zod';
import { type AmendmentRules, laidOver } from '../amendments.ts';
import { standIn } from '../stand-in.ts';
import { type BodyKind, bodyVersion } from './body-kind.ts';
import { kindOf } from './kinds.ts';

/** Why the body of a document is not read. */
export type BodyProblemCode =
  /** of a kind that this version does not know: a newer one wrote it */
  | 'unknown-kind'
  /** of a known kind in a shape that a newer version wrote: kept, and passed over here */
  | 'newer-schema'
  /** its schema version is no whole number from 1 */
  | 'no-version'
  /** it does not fit the schema of its kind: damaged, or written by something else */
  | 'does-not-fit'
  /** a step from an older version failed on it */
  | 'step-failed';

export interface BodyProblem {
  readonly id: string;
  readonly kind: string;
  readonly code: BodyProblemCode;
  /** what was expected where, for somebody who looks into it */
  readonly detail: string;
}

/** A document in the shape of today, or why it is passed over. */
export type BodyRead =
  | { readonly ok: true; readonly document: StoredDocument }
  | { readonly ok: false; readonly problem: BodyProblem };

function misfit(error: z.ZodError): string {
  return error.issues
    .slice(0, 3)
    .map(({ path, message }) => `${path.length === 0 ? 'body' : path.join('.')}: ${message}`)
    .join('; ');
}

/**
 * The document with its body at the version that this software writes. The stored one is never changed; what does not
 * fit is passed over with a reason and never hides the rest.
 *
 * @param document - as a store gave it [-]
 * @param kind - its kind; undefined where it is not known [-]
 * @returns the document as it is read today, or the problem [-]
 * Source: ours
 */
export function readBody(document: StoredDocument, kind: BodyKind | undefined = kindOf(document.kind)): BodyRead {
  const { id, schema, body } = document;
  const bad = (code: BodyProblemCode, detail: string): BodyRead => ({
    ok: false,
    problem: { id, kind: document.kind, code, detail },
  });
  if (kind === undefined) return bad('unknown-kind', document.kind);
  const latest = bodyVersion(kind);
  const written = kind.versions[schema - 1];
  if (Number.isInteger(schema) && schema > latest) return bad('newer-schema', `version ${schema}, known to ${latest}`);
  if (written === undefined) return bad('no-version', `version ${String(schema)}`);
  const fits = written.safeParse(body);
  if (!fits.success) return bad('does-not-fit', misfit(fits.error));
  if (schema === latest) return { ok: true, document };
  const stepped = migrateDocument({ version: schema, body }, kind.migrations);
  if (stepped.type === 'error')
    return bad('step-failed', `${stepped.reason} from version ${stepped.version ?? schema}`);
  const today = stepped.value['body'] as Json;
  const fitsNow = kind.versions[latest - 1]!.safeParse(today);
  if (!fitsNow.success) return bad('step-failed', misfit(fitsNow.error));
  return { ok: true, document: { ...document, schema: latest, body: today } };
}

/**
 * Documents as they are read today, in the same order, and what was passed over; a person or a visit that cannot be read
 * leaves something in its place, see `standIn`.
 */
export function readBodies(documents: readonly StoredDocument[]): {
  readonly documents: readonly StoredDocument[];
  readonly problems: readonly BodyProblem[];
} {
  const read = documents.map((one) => readBody(one));
  return {
    documents: read.flatMap((one, place) => (one.ok ? [one.document] : (standIn(documents[place]!) ?? []))),
    problems: read.flatMap((one) => (one.ok ? [] : [one.problem])),
  };
}

/** Whether a document may be amended by its kind, and still is one of its kind after it was. */
export const amendmentRules: AmendmentRules = {
  isAmendable: (kind) => kindOf(kind)?.amendable ?? false,
  fits: (document) => readBody(document).ok,
};

/** Some documents as they count today: brought to the present version, with the amendments and removals among them laid over. */
export function countingDocuments(documents: readonly StoredDocument[]): readonly StoredDocument[] {
  return laidOver(readBodies(documents).documents, amendmentRules).documents;
}
