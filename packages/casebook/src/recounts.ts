import type { Report } from '@surae/analysis';
import type { StoredDocument } from '@surae/storage';
import { type Entry, entryOf } from './entry.ts';

/** A set that was counted again by other criteria: the first result stays, and stays the one that counts. */
export interface Recount {
  readonly setId: string;
  /** its fingerprint holds every parameter that it was judged by */
  readonly report: Report;
  readonly settingsHash: string;
  /** name and version of what made it */
  readonly software: string;
  /** null where nothing was told */
  readonly why: string | null;
}

/** Version of the body of these documents. */
export const recountSchema = 1;

/** The re-counts among documents, in their order. */
export function recountsIn(documents: readonly StoredDocument[]): readonly Entry<Recount>[] {
  return documents.filter(({ kind }) => kind === 'recount').map((one) => entryOf<Recount>(one));
}
