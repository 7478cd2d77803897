import type { StoredDocument } from '@surae/storage';

/** What one document says, amendments laid over it, with who wrote it and when. */
export interface Entry<Body> {
  readonly id: string;
  /** when it was written, with offset */
  readonly at: string;
  readonly author: string;
  readonly body: Body;
}

/** The entry that a document of a known kind is. */
export function entryOf<Body>({ id, at, author, body }: StoredDocument): Entry<Body> {
  return { id, at, author, body: body as Body };
}
