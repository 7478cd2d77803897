import { type BackupNote, type BackupReport, type RecordStore, StorageError } from '@surae/storage';

/** A backup that was made and read back. */
export interface MadeBackup {
  readonly blob: Blob;
  readonly note: BackupNote;
}

/** What a backup is called as a file: when it was made, and nothing of whose it is. */
export function backupName(at: string): string {
  return `surae-backup-${at.slice(0, 16).replace('T', '-').replace(':', '')}.jsonl`;
}

/** The bytes of a file, as often as they are asked for. */
export function sourceOf(file: Blob): () => AsyncIterable<Uint8Array> {
  return async function* () {
    const reader = file.stream().getReader();
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      yield value;
    }
  };
}

/**
 * A backup of everything in a store, read back before it is given. Rejects with `damaged-backup` where what was read back is not
 * what was written.
 */
export async function madeBackup(store: RecordStore, at: string): Promise<MadeBackup> {
  const pieces: BlobPart[] = [];
  for await (const piece of store.backup()) pieces.push(piece as Uint8Array<ArrayBuffer>);
  const blob = new Blob(pieces, { type: 'application/jsonl' });
  const report: BackupReport = await store.checkBackup(sourceOf(blob));
  if (!report.isWhole) throw new StorageError('damaged-backup', 'What was read back is not what was written.');
  const { documents, streams, bytes } = report;
  return { blob, note: { at, documents: documents.whole, streams: streams.whole, bytes } };
}
