import type { ErasureReceipt } from '@surae/storage';
import type { SavedFile } from '../result/set-files.ts';
import { softwareName } from '../result/software.ts';

/** The receipt of an erasure as a file: counts, when and by whom, and nothing of whom but the random id. */
export function receiptFile({ personId, documents, streams, bytes, tombstone }: ErasureReceipt): SavedFile {
  const { at, author } = tombstone;
  const told = { what: 'person-erased', personId, documents, streams, bytes, at, author, software: softwareName() };
  return {
    name: `surae-erased-${at.slice(0, 10)}-${personId.slice(0, 8)}.json`,
    type: 'application/json',
    content: `${JSON.stringify(told, null, 2)}\n`,
  };
}
