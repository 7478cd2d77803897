import 'fake-indexeddb/auto';
import type { StoredDocument } from '@surae/storage';

let used = 0;

/** A name that no database has had in this run. */
export function freshName(): string {
  used += 1;
  return `store-${used}`;
}

function done<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.addEventListener('success', () => resolve(request.result));
    request.addEventListener('error', () => reject(request.error ?? new Error('The database gave no reason.')));
  });
}

/** The database itself, past the store: what a damaged disk or a curious hand might do. */
export async function inDatabase(name: string, work: (database: IDBDatabase) => Promise<void>): Promise<void> {
  const database = await done(indexedDB.open(name));
  try {
    await work(database);
  } finally {
    database.close();
  }
}

/** Changes the rows of one object store; a row that becomes undefined is taken away. */
export async function alterRows<Row>(
  name: string,
  objectStore: string,
  change: (row: Row) => Row | undefined,
): Promise<void> {
  await inDatabase(name, async (database) => {
    const store = database.transaction(objectStore, 'readwrite').objectStore(objectStore);
    const [rows, keys] = await Promise.all([done(store.getAll() as IDBRequest<Row[]>), done(store.getAllKeys())]);
    for (const [i, row] of rows.entries()) {
      const altered = change(row);
      if (altered === undefined) await done(store.delete(keys[i]));
      else await done(store.put(altered));
    }
  });
}

/** Changes every stored document. */
export function alterDocuments(name: string, change: (document: StoredDocument) => StoredDocument): Promise<void> {
  return alterRows<StoredDocument>(name, 'documents', change);
}
