// The database of the killed page itself, past its store.
import { IndexedDbStore } from '@surae/storage';

/** A database as version 1 made it, with people and visits. */
export async function makeOld(name: string): Promise<string[]> {
  const seed = await IndexedDbStore.open(`${name}-seed`);
  const rows: object[] = [];
  for (let i = 0; i < 30; i += 1) {
    const at = '2026-03-01T09:30:00+01:00';
    const given = { schema: 1, author: 'a tester', at, body: { n: i } };
    const person = await seed.add({ ...given, kind: 'person', about: null });
    rows.push(person, await seed.add({ ...given, kind: 'visit', about: person.id }));
  }
  seed.close();
  const opening = indexedDB.open(name, 1);
  await new Promise<void>((resolve, reject) => {
    opening.onerror = () => reject(new Error('The old database cannot be made.'));
    opening.onupgradeneeded = () => {
      const documents = opening.result.createObjectStore('documents', { keyPath: 'sequence', autoIncrement: true });
      documents.createIndex('id', 'id', { unique: true });
      documents.createIndex('kind', 'kind');
      documents.createIndex('kind-about', ['kind', 'about']);
      opening.result
        .createObjectStore('streams', { keyPath: 'sequence', autoIncrement: true })
        .createIndex('id', 'id', { unique: true });
      opening.result.createObjectStore('pieces', { keyPath: ['stream', 'index'] });
      for (const row of rows) documents.add(row);
    };
    opening.onsuccess = () => {
      opening.result.close();
      resolve();
    };
  });
  return rows.map((row) => (row as { id: string }).id);
}

/** Whether any row of the encrypted database holds a word that was written. */
export async function hasPlaintext(name: string): Promise<boolean> {
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    const opening = indexedDB.open(name);
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(new Error('The database cannot be opened.'));
  });
  let all = '';
  for (const objectStore of database.objectStoreNames) {
    const rows = await new Promise<unknown[]>((resolve) => {
      const reading = database.transaction(objectStore).objectStore(objectStore).getAll();
      reading.onsuccess = () => resolve(reading.result as unknown[]);
    });
    const decoder = new TextDecoder('latin1');
    all += JSON.stringify(rows, (_key, value: unknown) =>
      value instanceof Uint8Array ? decoder.decode(value) : value,
    );
  }
  database.close();
  return all.includes('Mirlund') || all.includes('a tester');
}
