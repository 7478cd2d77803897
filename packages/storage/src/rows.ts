import type { Access } from './access.ts';
import type { Json } from './document.ts';
import type { DocumentQuery, StoreProblem } from './record-store.ts';

/** What can be read of a document without a key, and by what it is found. */
export interface RowKeys {
  readonly id: string;
  readonly kind: string;
  readonly about: string | null;
  /** person whose it is; rows of version 1 that were never migrated have none */
  readonly whose: string | null;
}

/** A document that lies open. */
export interface PlainRow extends RowKeys {
  readonly schema: number;
  readonly author: string;
  readonly at: string;
  readonly body: Json;
  readonly hash: string;
}

/** A document that lies encrypted. */
export interface SealedRow extends RowKeys {
  readonly sealed: Uint8Array;
}

export type NewRow = PlainRow | SealedRow;
export type DocumentRow = NewRow & { readonly sequence: number };

/** A stream of bytes without its pieces. */
export interface StreamRow {
  readonly id: string;
  readonly whose: string | null;
  /** empty where it lies encrypted */
  readonly label: string;
  /** null while open, and where it lies encrypted */
  readonly sha256: string | null;
  /** number of pieces once closed */
  readonly pieces: number | null;
  readonly sealed?: Uint8Array;
}

/** A stream that was closed, with its place in the order of closing. */
export interface ClosedRow {
  readonly closing: number;
  readonly stream: StreamRow;
}

export interface PieceRow {
  readonly index: number;
  readonly bytes: Uint8Array;
}

/** The key of a person, wrapped; of an erased person nothing but that they were. */
export interface KeyRow {
  readonly whose: string;
  readonly wrapped: Uint8Array | null;
  readonly erased: boolean;
  /** outline of the person, encrypted under that key: it goes where the key goes */
  readonly outline?: Uint8Array;
}

/** What is kept about outlines: the value that was there when they were read, and the one that comes in its place. */
export interface OutlineSetting {
  readonly name: string;
  readonly before: Uint8Array | undefined;
  readonly value: Uint8Array;
}

export interface ErasedCounts {
  readonly documents: number;
  readonly streams: number;
  readonly bytes: number;
}

/**
 * What a store of records stands on: rows that mean nothing to it. Each call that writes is all or nothing, is safe on the disk
 * before its promise is fulfilled, and rejects with `erased` where a row belongs to a person who was erased.
 */
export interface Rows {
  readonly access: Access;
  /** Adds rows in this order; gives the place of each. Rejects when one has the id of an earlier one. */
  addDocuments(rows: readonly NewRow[]): Promise<readonly number[]>;
  documentOf(id: string): Promise<DocumentRow | undefined>;
  /** In the order of their places. */
  findDocuments(query: DocumentQuery): Promise<readonly DocumentRow[]>;
  documentsAfter(sequence: number, limit: number): Promise<readonly DocumentRow[]>;
  /** Place of the last document; 0 without one. */
  lastDocument(): Promise<number>;
  addStream(row: StreamRow): Promise<void>;
  /** Adds pieces from an index on; rejects when the stream is closed or gone. */
  addPieces(stream: string, from: number, pieces: readonly Uint8Array[]): Promise<void>;
  /** Puts the closed row in place of the open one; rejects with `already-closed` when it was closed. */
  closeStream(row: StreamRow): Promise<void>;
  streamOf(id: string): Promise<StreamRow | undefined>;
  /** In the order in which they were opened. */
  streams(): Promise<readonly StreamRow[]>;
  closedAfter(closing: number, limit: number): Promise<readonly ClosedRow[]>;
  pieces(stream: string): Promise<readonly PieceRow[]>;
  /** Keys of these people that there are; of everybody without a list. */
  keys(whose?: readonly string[]): Promise<readonly KeyRow[]>;
  /** Adds a key; where the person has one or was erased, that row is given and stays. */
  addKey(row: KeyRow): Promise<KeyRow>;
  setting(name: string): Promise<Json | Uint8Array | undefined>;
  keepSetting(name: string, value: Json | Uint8Array): Promise<void>;
  /**
   * Puts outlines into the rows of keys of these people, and a setting with them; people without a key, or erased, are passed
   * over. Does nothing and gives false where the setting is another one than before, or the place keeps none. It need not be safe
   * at once: what is lost is made again.
   */
  keepOutlines(outlines: ReadonlyMap<string, Uint8Array>, setting: OutlineSetting): Promise<boolean>;
  /**
   * Takes away all documents, streams and the key of a person, and these streams besides, and adds a row in their place; does
   * nothing and gives false when there is another number of documents or streams than expected.
   */
  erase(whose: string, streams: readonly string[], expected: ErasedCounts, tombstone: NewRow): Promise<boolean>;
  /** What the place itself knows to be damaged. */
  problems(): Promise<readonly StoreProblem[]>;
  close(): void;
}
