import type { StoredDocument } from '@surae/storage';
import type { Page } from 'playwright-core';

/** Every document in the store of the browser, in order, as it lies in the database. */
export function storedDocuments(page: Page): Promise<StoredDocument[]> {
  return page.evaluate(
    () =>
      new Promise<StoredDocument[]>((resolve, reject) => {
        const opening = indexedDB.open('surae');
        opening.onerror = () => reject(new Error('The store cannot be opened.'));
        opening.onsuccess = () => {
          const database = opening.result;
          const reading = database.transaction('documents').objectStore('documents').getAll();
          reading.onsuccess = () => {
            resolve(reading.result as StoredDocument[]);
            database.close();
          };
        };
      }),
  );
}

/** The bodies of all documents of a kind. */
export async function storedBodies<Body>(page: Page, kind: string): Promise<Body[]> {
  return (await storedDocuments(page)).filter((one) => one.kind === kind).map(({ body }) => body as unknown as Body);
}
