import type { Migration } from '@surae/records';
import type { z } from 'zod';

/** One kind of document: the shape of its body by version, and how an older one is read. */
export interface BodyKind {
  /** the word that documents carry */
  readonly kind: string;
  /** what a document of it is about */
  readonly about: 'nothing' | 'person' | 'person-or-nothing' | 'visit' | 'sensor' | 'document';
  /** whether an amendment may change it; what was recorded while it happened may not, it gets a newer document of its own */
  readonly amendable: boolean;
  /** shape of the body, version 1 first; never edited after release, a new version is added behind it */
  readonly versions: readonly [z.ZodType, ...z.ZodType[]];
  /** step `n` takes a document `{ version, body }` from version `n` to the next; never edited after release */
  readonly migrations: readonly Migration[];
}

/** Version of the bodies of a kind that is written now. */
export function bodyVersion({ versions }: Pick<BodyKind, 'versions'>): number {
  return versions.length;
}
