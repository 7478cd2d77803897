import type { Codec } from './codec.ts';
import { StorageError } from './errors.ts';
import { isReadable } from './readable.ts';
import type { AskedBy, ErasureReceipt } from './record-store.ts';
import type { ErasedCounts, Rows, StreamRow } from './rows.ts';
import { seal } from './seal.ts';

/** Kind of the document that stays in place of a person. */
export const tombstoneKind = 'person-erased';

/** Streams of a person: those that say so, and those of nobody that a document of the person names. */
async function streamsOf(rows: Rows, codec: Codec, personId: string): Promise<readonly StreamRow[]> {
  const streams = await rows.streams();
  const documents = await codec.openDocuments(await rows.findDocuments({ whose: personId }));
  const named = new Set(
    documents.filter(isReadable).flatMap(({ body }) => JSON.stringify(body).match(/\b[0-9a-f]{32}\b/g) ?? []),
  );
  return streams.filter(({ id, whose }) => whose === personId || ((whose ?? null) === null && named.has(id)));
}

async function countsOf(rows: Rows, personId: string, streams: readonly StreamRow[]): Promise<ErasedCounts> {
  const documents = await rows.findDocuments({ whose: personId });
  let bytes = 0;
  for (const { id } of streams) for (const piece of await rows.pieces(id)) bytes += piece.bytes.length;
  return { documents: documents.length, streams: streams.length, bytes };
}

/** Destroys what is kept of a person and the key to it: see {@link RecordStore.erase}. */
export async function erasePerson(rows: Rows, codec: Codec, personId: string, by: AskedBy): Promise<ErasureReceipt> {
  // under the empty name lies the key of what is nobody's
  if (personId === '') throw new RangeError('The id of a person was expected; an empty text came.');
  const [key] = await rows.keys([personId]);
  if (key?.erased === true) throw new StorageError('erased', 'This person was erased before.');
  for (;;) {
    const streams = await streamsOf(rows, codec, personId);
    const counts = await countsOf(rows, personId, streams);
    const body = { ...counts };
    const sealed = seal({ kind: tombstoneKind, schema: 1, about: personId, author: by.author, at: by.at, body });
    const row = await codec.sealDocument(sealed, null);
    const ids = streams.map(({ id }) => id);
    // something may have come between counting and taking away
    if (!(await rows.erase(personId, ids, counts, row))) continue;
    codec.forget(personId);
    const { sequence } = (await rows.documentOf(sealed.id))!;
    return { personId, ...counts, tombstone: { ...sealed, sequence } };
  }
}
