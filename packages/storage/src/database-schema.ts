import type { DBSchema, IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import type { Json } from './document.ts';
import type { KeyRow, NewRow, StreamRow } from './rows.ts';

/** A document as it lies in the database; one of version 1 said nothing of the person whose it is. */
type DocumentValue = NewRow & { sequence?: number };

export interface StoreSchema extends DBSchema {
  documents: {
    key: number;
    value: DocumentValue;
    indexes: { id: string; kind: string; 'kind-about': [string, string]; about: string; whose: string };
  };
  streams: { key: number; value: StreamRow & { sequence?: number }; indexes: { id: string } };
  pieces: { key: [string, number]; value: { stream: string; index: number; bytes: Uint8Array } };
  /** streams in the order in which they were closed */
  closings: { key: number; value: { closing?: number; stream: string } };
  keys: { key: string; value: KeyRow };
  settings: { key: string; value: { name: string; value: Json | Uint8Array } };
}

export type Database = IDBPDatabase<StoreSchema>;
export type VersionChange = IDBPTransaction<StoreSchema, StoreNames<StoreSchema>[], 'versionchange'>;
