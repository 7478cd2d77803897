import type { RecordStore } from '@surae/storage';
import type { Page } from 'playwright-core';

/** Everything in a store as rows of the database of the browser; bytes as base64. One stream may be told as never closed. */
async function rowsOf(store: RecordStore, open: string): Promise<object> {
  const { documents, streams } = await store.changesSince(null, Number.MAX_SAFE_INTEGER);
  const pieces = await Promise.all(
    streams.map(async ({ id }) => {
      const bytes = await store.bytes(id);
      return (bytes?.pieces ?? []).map((piece, index) => ({
        stream: id,
        index,
        bytes: Buffer.from(piece).toString('base64'),
      }));
    }),
  );
  return {
    documents: documents.map(({ document, whose }) => ({ ...document, whose, sequence: undefined })),
    streams: streams.map(({ id, label, whose, sha256 }, i) => ({
      id,
      label,
      whose,
      sha256: id === open ? null : sha256,
      pieces: id === open ? null : pieces[i].length,
    })),
    pieces: pieces.flat(),
    closings: streams.filter(({ id }) => id !== open).map(({ id }) => ({ stream: id })),
  };
}

/**
 * Puts a clinic that was made elsewhere in the place of what the browser has stored, or beside it; the stream that is named was never
 * closed.
 */
export async function putClinic(page: Page, store: RecordStore, open: string, where = 'in-place'): Promise<void> {
  const given = JSON.stringify({ where, stored: await rowsOf(store, open) });
  await page.evaluate(
    (text) =>
      new Promise<void>((resolve, reject) => {
        type Rows = Record<string, (object & { bytes?: string | Uint8Array })[]>;
        const { where: place, stored: rows } = JSON.parse(text) as { where: string; stored: Rows };
        for (const piece of rows['pieces'] ?? []) {
          piece.bytes = Uint8Array.from(atob(String(piece.bytes)), (sign) => sign.charCodeAt(0));
        }
        const opening = indexedDB.open('surae');
        opening.onerror = () => reject(new Error('The store cannot be opened.'));
        opening.onsuccess = () => {
          const database = opening.result;
          const writing = database.transaction(Object.keys(rows), 'readwrite');
          for (const [name, all] of Object.entries(rows)) {
            if (place === 'in-place') writing.objectStore(name).clear();
            for (const row of all) writing.objectStore(name).add(row);
          }
          writing.onerror = () => reject(new Error('A row cannot be put into the store.'));
          writing.oncomplete = () => {
            database.close();
            resolve();
          };
        };
      }),
    given,
  );
}
