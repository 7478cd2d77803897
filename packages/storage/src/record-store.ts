import type { NewDocument, StoredDocument } from './document.ts';

/** A stream of opaque bytes as it is kept: pieces in order, closed or not. */
export interface StoredBytes {
  readonly id: string;
  /** pieces that are safe, in order */
  readonly pieces: readonly Uint8Array[];
  /** SHA-256 over all pieces once closed; null while open, and for ever when the program was killed */
  readonly sha256: string | null;
}

/** What is being recorded: every piece is safe once its promise is fulfilled. */
export interface ByteWriter {
  readonly id: string;
  /** Adds a piece after all earlier ones; rejects with a {@link StorageError}, and then nothing was added. */
  append(piece: Uint8Array): Promise<void>;
  /** Says that it is whole; gives the SHA-256 over all pieces. */
  close(): Promise<string>;
}

export interface DocumentQuery {
  readonly kind: string;
  readonly about?: string;
}

/**
 * Documents and bytes, append only: nothing can be overwritten or taken away. All of it is asynchronous, so that a store
 * that encrypts can be put around another one.
 */
export interface RecordStore {
  /** Keeps a document under a new id of its own. */
  add(document: NewDocument): Promise<StoredDocument>;
  /** The document; undefined when there is none. Rejects with `altered` when it does not match its hash. */
  document(id: string): Promise<StoredDocument | undefined>;
  /** Documents of one kind in the order in which they were added; one that is altered is left out and listed by {@link problems}. */
  documents(query: DocumentQuery): Promise<readonly StoredDocument[]>;
  /** Begins a stream of bytes; `label` says what it is, for somebody who looks at the store itself. */
  openBytes(label: string): Promise<ByteWriter>;
  /** The bytes; undefined when there are none of this id. */
  bytes(id: string): Promise<StoredBytes | undefined>;
  /** Ids of streams that were never closed, oldest first: a set during which the program was killed. */
  openStreams(): Promise<readonly string[]>;
  /** What is damaged; loading never fails for it. */
  problems(): Promise<readonly StoreProblem[]>;
  close(): void;
}

export interface StoreProblem {
  readonly id: string;
  readonly code: 'altered' | 'piece-missing';
}
