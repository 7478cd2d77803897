import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { StoredDocument } from './document.ts';
import { StorageError } from './errors.ts';

/** A stream of bytes without its pieces. */
export interface StreamRow {
  readonly id: string;
  readonly label: string;
  readonly sha256: string | null;
  /** number of pieces once closed */
  readonly pieces: number | null;
}

export interface StoreSchema extends DBSchema {
  documents: {
    key: number;
    value: Omit<StoredDocument, 'sequence'> & { sequence?: number };
    indexes: { id: string; kind: string; 'kind-about': [string, string] };
  };
  streams: { key: number; value: StreamRow & { sequence?: number }; indexes: { id: string } };
  pieces: { key: [string, number]; value: { stream: string; index: number; bytes: Uint8Array } };
}

export type Database = IDBPDatabase<StoreSchema>;

/** One step from a version of the database to the next. */
export type DatabaseStep = (database: Database) => void;

/** All steps that were released, in order; a step is never edited after it was released. */
const releasedSteps: readonly DatabaseStep[] = [
  (database) => {
    const documents = database.createObjectStore('documents', { keyPath: 'sequence', autoIncrement: true });
    documents.createIndex('id', 'id', { unique: true });
    documents.createIndex('kind', 'kind');
    documents.createIndex('kind-about', ['kind', 'about']);
    const streams = database.createObjectStore('streams', { keyPath: 'sequence', autoIncrement: true });
    streams.createIndex('id', 'id', { unique: true });
    database.createObjectStore('pieces', { keyPath: ['stream', 'index'] });
  },
];

/** Version of the database that this software writes. */
export const databaseVersion = releasedSteps.length;

/** A foreign error as ours. */
export function storageError(error: unknown): StorageError {
  if (error instanceof StorageError) return error;
  const name = error instanceof Error ? error.name : '';
  const cause = { cause: error };
  if (name === 'QuotaExceededError') return new StorageError('full', 'The browser gives no more room.', cause);
  if (name === 'VersionError') {
    return new StorageError('newer-version', 'The store was written by a newer version of this software.', cause);
  }
  if (name === 'SecurityError' || name === 'InvalidStateError') {
    return new StorageError('unavailable', 'The browser gives no store.', cause);
  }
  return new StorageError(
    'failed',
    `The store failed: ${error instanceof Error ? error.message : String(error)}`,
    cause,
  );
}

/**
 * Opens the database of a name and brings it to the present version: all steps that it lacks are taken, or none. Rejects
 * with a {@link StorageError}.
 */
export async function openDatabase(name: string, steps: readonly DatabaseStep[] = releasedSteps): Promise<Database> {
  if (typeof indexedDB === 'undefined') throw new StorageError('unavailable', 'The browser gives no store.');
  return new Promise((resolve, reject) => {
    const opening = openDB<StoreSchema>(name, steps.length, {
      upgrade: (database, from, _to, change) => {
        // that it failed is said by the opening itself
        change.done.catch(() => undefined);
        for (const step of steps.slice(from)) step(database);
      },
      blocked: () => {
        reject(new StorageError('blocked', 'Another window uses an older version of this software.'));
        // it opens once that window is closed, and nobody waits for it then
        opening.then((database) => database.close()).catch(() => undefined);
      },
      // another window wants to upgrade: let it, this one must be reloaded
      blocking: (_current, _blocked, event) => (event.target as IDBDatabase).close(),
    });
    opening.then(resolve).catch((error: unknown) => reject(storageError(error)));
  });
}
