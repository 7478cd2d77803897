import type { Codec } from './codec.ts';
import { isReadable } from './readable.ts';
import type { Changes } from './record-store.ts';
import type { Rows } from './rows.ts';

/** A mark is the place of the last document and of the last closing that were told. */
function placesOf(mark: string | null): [number, number] {
  if (mark === null) return [0, 0];
  const [, sequence, closing] = /^(\d+)\.(\d+)$/.exec(mark) ?? [];
  if (sequence === undefined || closing === undefined) {
    throw new RangeError(`A mark of a store was expected, such as 12.3; "${mark}" came.`);
  }
  return [Number(sequence), Number(closing)];
}

/** What came since a mark: see {@link RecordStore.changesSince}. */
export async function changesSince(rows: Rows, codec: Codec, mark: string | null, limit: number): Promise<Changes> {
  const [sequence, closing] = placesOf(mark);
  const [documentRows, closedRows] = await Promise.all([
    rows.documentsAfter(sequence, limit),
    rows.closedAfter(closing, limit),
  ]);
  const [documents, streams] = await Promise.all([
    codec.openDocuments(documentRows),
    Promise.all(closedRows.map(({ stream }) => codec.openStream(stream))),
  ]);
  return {
    documents: documents.flatMap((document, i) =>
      isReadable(document) ? [{ document, whose: documentRows[i]!.whose ?? null }] : [],
    ),
    streams: streams.filter(isReadable),
    mark: `${documentRows.at(-1)?.sequence ?? sequence}.${closedRows.at(-1)?.closing ?? closing}`,
    more: documentRows.length === limit || closedRows.length === limit,
  };
}
