/** Plain JSON. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/** What one wants kept. */
export interface NewDocument {
  /** what sort of document it is, such as `person` or `set-result` */
  readonly kind: string;
  /** version of the shape of the body, from 1 */
  readonly schema: number;
  /** whose document it is about another one: the person of a visit, the visit of a set */
  readonly about: string | null;
  readonly author: string;
  /** when, with offset: ISO 8601 such as 2026-03-01T09:30:00+01:00 */
  readonly at: string;
  readonly body: Json;
  /**
   * Id of the person whose it is; null when it is nobody's. Left out, it follows from `about`: a document of the kind `person`
   * is its own, any other is whose the document is that it is about, and nobody's where there is none.
   */
  readonly whose?: string | null;
}

/** A document as it is kept: it never changes. A correction is a new document about the old one. */
export interface StoredDocument extends Omit<NewDocument, 'whose'> {
  readonly id: string;
  /** place in the order in which this store took its documents, rising */
  readonly sequence: number;
  /** SHA-256 over the canonical JSON of everything in it but this hash and the sequence, lower-case hexadecimal */
  readonly hash: string;
}

/** A document with the person whose it is. */
export interface OwnedDocument {
  readonly document: StoredDocument;
  readonly whose: string | null;
}
