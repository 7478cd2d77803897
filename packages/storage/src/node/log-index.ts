import type { Json } from '../document.ts';
import { StorageError } from '../errors.ts';
import type { KeyRow, RowKeys, StreamRow } from '../rows.ts';
import type { LogEntry } from './log-entry.ts';

/** Version of the form of the files. */
export const filesVersion = 1;

/** Where a document lies: its frame, and its place among those of the frame. */
export interface IndexedRow extends RowKeys {
  readonly sequence: number;
  readonly at: number;
  readonly length: number;
  readonly place: number;
}

export interface IndexedStream {
  readonly row: StreamRow;
  readonly closing: number | null;
}

/** What the log of a store comes to, without the contents of its documents. */
export class LogIndex {
  readonly documents: IndexedRow[] = [];
  readonly byId = new Map<string, IndexedRow>();
  readonly streams = new Map<string, IndexedStream>();
  readonly keys = new Map<string, KeyRow>();
  readonly settings = new Map<string, Json | Uint8Array>();
  readonly erasedStreams: string[] = [];
  readonly lost: string[] = [];
  sequence = 0;
  closing = 0;

  take(entry: LogEntry, at: number, length: number): void {
    if (entry.op === 'store') {
      if (entry.version > filesVersion) {
        throw new StorageError('newer-version', 'The store was written by a newer version of this software.');
      }
    } else if (entry.op === 'documents') {
      entry.rows.forEach(({ id, kind, about, whose, sequence }, place) => {
        const row = { id, kind, about, whose, sequence, at, length, place };
        this.documents.push(row);
        this.byId.set(id, row);
        this.sequence = Math.max(this.sequence, sequence);
      });
    } else if (entry.op === 'stream') this.streams.set(entry.row.id, { row: entry.row, closing: null });
    else if (entry.op === 'closed') {
      this.streams.set(entry.row.id, { row: entry.row, closing: entry.closing });
      this.closing = Math.max(this.closing, entry.closing);
    } else if (entry.op === 'key') this.keys.set(entry.row.whose, entry.row);
    else if (entry.op === 'setting') this.settings.set(entry.name, entry.value);
    else if (entry.op === 'lost') this.lost.push(...entry.ids);
    else {
      this.erasedStreams.push(...entry.streams);
      this.closing = Math.max(this.closing, entry.closing);
    }
  }
}
