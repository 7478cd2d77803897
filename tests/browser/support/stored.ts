import type { OwnedDocument, StoredDocument } from '@surae/storage';
import type { Page } from 'playwright-core';

/** How long nothing may come before what lies in the store is read as all of it [ms]; a press may write several documents. */
const STILL_MS = 250;

/** Every document in the store of the browser, in order, as it lies in the database once nothing more comes. */
export async function storedDocuments(page: Page): Promise<StoredDocument[]> {
  for (let before = -1; ; ) {
    const all = await documentsNow(page);
    if (all.length === before) return all;
    before = all.length;
    await new Promise((resolve) => setTimeout(resolve, STILL_MS));
  }
}

/** Every document that lies in the database now. */
function documentsNow(page: Page): Promise<StoredDocument[]> {
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

/** Puts documents that were made elsewhere behind those in the store of the browser, as they are. */
export function putDocuments(page: Page, documents: readonly OwnedDocument[]): Promise<void> {
  return page.evaluate(
    (given) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('surae');
        opening.onerror = () => reject(new Error('The store cannot be opened.'));
        opening.onsuccess = () => {
          const database = opening.result;
          const writing = database.transaction('documents', 'readwrite');
          // the store gives each its place
          for (const document of JSON.parse(given) as object[]) writing.objectStore('documents').add(document);
          writing.onerror = () => reject(new Error('A document cannot be put into the store.'));
          writing.oncomplete = () => {
            database.close();
            resolve();
          };
        };
      }),
    JSON.stringify(documents.map(({ document, whose }) => ({ ...document, whose, sequence: undefined }))),
  );
}

/** Turns one byte of every piece of a stream of bytes, as a disk that fails would. */
export function spoilBytes(page: Page, streamId: string): Promise<void> {
  return page.evaluate(
    (stream) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('surae');
        opening.onerror = () => reject(new Error('The store cannot be opened.'));
        opening.onsuccess = () => {
          const database = opening.result;
          const writing = database.transaction('pieces', 'readwrite');
          const pieces = writing.objectStore('pieces');
          const reading = pieces.getAll(IDBKeyRange.bound([stream, 0], [stream, Infinity]));
          reading.onsuccess = () => {
            for (const piece of reading.result as { readonly bytes: Uint8Array }[]) {
              piece.bytes[piece.bytes.length - 1] ^= 1;
              pieces.put(piece);
            }
          };
          writing.onerror = () => reject(new Error('The bytes cannot be changed.'));
          writing.oncomplete = () => {
            database.close();
            resolve();
          };
        };
      }),
    streamId,
  );
}

/** The bodies of all documents of a kind. */
export async function storedBodies<Body>(page: Page, kind: string): Promise<Body[]> {
  return (await storedDocuments(page)).filter((one) => one.kind === kind).map(({ body }) => body as unknown as Body);
}

/** The bytes of a stream in the store of the browser, piece by piece, as they lie in the database. */
export async function storedPieces(page: Page, streamId: string): Promise<Uint8Array[]> {
  const pieces = await page.evaluate(
    (stream) =>
      new Promise<string[]>((resolve, reject) => {
        const opening = indexedDB.open('surae');
        opening.onerror = () => reject(new Error('The store cannot be opened.'));
        opening.onsuccess = () => {
          const database = opening.result;
          const reading = database
            .transaction('pieces')
            .objectStore('pieces')
            .getAll(IDBKeyRange.bound([stream, 0], [stream, Infinity]));
          reading.onerror = () => reject(new Error('The bytes cannot be read.'));
          reading.onsuccess = () => {
            const all = reading.result as { readonly bytes: Uint8Array }[];
            resolve(all.map(({ bytes }) => Array.from(bytes, (byte) => String.fromCharCode(byte)).join('')));
            database.close();
          };
        };
      }),
    streamId,
  );
  return pieces.map((piece) => Uint8Array.from(piece, (sign) => sign.charCodeAt(0)));
}
