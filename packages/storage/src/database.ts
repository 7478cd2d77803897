import { openDB } from 'idb';
import type { Database, StoreSchema, VersionChange } from './database-schema.ts';
import { StorageError } from './errors.ts';
import { tellWhose } from './tell-whose.ts';

/** One step from a version of the database to the next. */
export type DatabaseStep = (database: Database, change: VersionChange) => void | Promise<void>;

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
  (database, change) => {
    const documents = change.objectStore('documents');
    documents.createIndex('about', 'about');
    documents.createIndex('whose', 'whose');
    database.createObjectStore('closings', { keyPath: 'closing', autoIncrement: true });
    database.createObjectStore('keys', { keyPath: 'whose' });
    database.createObjectStore('settings', { keyPath: 'name' });
    return tellWhose(change);
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

/** Takes steps one after the other; one that fails takes all of them back. */
async function takeSteps(steps: readonly DatabaseStep[], database: Database, change: VersionChange): Promise<void> {
  try {
    for (const step of steps) await step(database, change);
  } catch {
    try {
      // the opening is rejected for it
      change.abort();
    } catch {
      // it is over already
    }
  }
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
        void takeSteps(steps.slice(from), database, change);
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
