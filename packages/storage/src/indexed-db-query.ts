import type { Database } from './database-schema.ts';
import type { DocumentQuery } from './record-store.ts';
import { asList, fitsQuery } from './row-query.ts';
import type { DocumentRow } from './rows.ts';

/** Rows that fit a query, by the index that leaves the fewest to look at, in the order of their places. */
export async function findRows(database: Database, query: DocumentQuery): Promise<readonly DocumentRow[]> {
  const { store } = database.transaction('documents');
  const kinds = asList(query.kind);
  const abouts = asList(query.about);
  let found: readonly unknown[][];
  if (query.whose !== undefined) found = [await store.index('whose').getAll(query.whose)];
  else if (abouts !== undefined && kinds?.length === 1) {
    found = await Promise.all(abouts.map((about) => store.index('kind-about').getAll([kinds[0]!, about])));
  } else if (abouts !== undefined) found = await Promise.all(abouts.map((about) => store.index('about').getAll(about)));
  else if (kinds !== undefined) found = await Promise.all(kinds.map((kind) => store.index('kind').getAll(kind)));
  else found = [await store.getAll()];
  const rows = (found.flat() as DocumentRow[]).filter(fitsQuery(query));
  // an id that was asked for twice is found once
  const bySequence = new Map(rows.map((row) => [row.sequence, row]));
  return [...bySequence.values()].sort((a, b) => a.sequence - b.sequence);
}
