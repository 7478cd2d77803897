import type { VersionChange } from './database-schema.ts';
import type { PlainRow } from './rows.ts';

// Part of the second step of the database, and as little to be edited as the step itself.

/** Whose a document of version 1 is: a person is its own, any other is whose the document is that it is about. */
function whoseOf({ id, kind, about }: PlainRow, known: ReadonlyMap<string, string>): string | null {
  if (kind === 'person') return id;
  return about === null ? null : (known.get(about) ?? null);
}

/**
 * Writes beside every document and every stream of version 1 whose it is. A stream is of the person whose document first names it.
 * The closed ones get their places in the order in which they were begun.
 */
export async function tellWhose(change: VersionChange): Promise<void> {
  const known = new Map<string, string>();
  const named = new Map<string, string>();
  let document = await change.objectStore('documents').openCursor();
  while (document !== null) {
    const row = document.value as PlainRow;
    const whose = whoseOf(row, known);
    if (whose !== null) {
      known.set(row.id, whose);
      for (const id of JSON.stringify(row.body).match(/\b[0-9a-f]{32}\b/g) ?? []) {
        if (!named.has(id)) named.set(id, whose);
      }
    }
    await document.update({ ...document.value, whose });
    document = await document.continue();
  }
  let stream = await change.objectStore('streams').openCursor();
  while (stream !== null) {
    const row = stream.value;
    await stream.update({ ...row, whose: named.get(row.id) ?? null });
    if (row.pieces !== null) await change.objectStore('closings').add({ stream: row.id });
    stream = await stream.continue();
  }
}
