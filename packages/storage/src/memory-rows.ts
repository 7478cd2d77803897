import { Access } from './access.ts';
import type { Json } from './document.ts';
import { StorageError } from './errors.ts';
import type { DocumentQuery } from './record-store.ts';
import { fitsQuery } from './row-query.ts';
import type {
  ClosedRow,
  DocumentRow,
  ErasedCounts,
  KeyRow,
  NewRow,
  OutlineSetting,
  PieceRow,
  Rows,
  StreamRow,
} from './rows.ts';
import { sameBytes } from './same-bytes.ts';

/** A call that is done at once, with its refusal as a rejection. */
function atOnce<T>(work: () => T): Promise<T> {
  return new Promise((resolve) => {
    resolve(work());
  });
}

/** Rows that live as long as the program. */
export class MemoryRows implements Rows {
  readonly access = new Access();
  private kept: DocumentRow[] = [];
  private sequence = 0;
  private closing = 0;
  private readonly streamRows = new Map<string, { row: StreamRow; closing: number | null; pieces: Uint8Array[] }>();
  private readonly keyRows = new Map<string, KeyRow>();
  private readonly settings = new Map<string, Json | Uint8Array>();

  addDocuments(rows: readonly NewRow[]): Promise<readonly number[]> {
    return atOnce(() => {
      const ids = new Set(this.kept.map(({ id }) => id));
      for (const row of rows) {
        this.refuseErased(row.whose);
        if (ids.has(row.id)) throw new StorageError('failed', `There is a document ${row.id} already.`);
        ids.add(row.id);
      }
      return rows.map((row) => {
        this.sequence += 1;
        this.kept.push({ ...row, sequence: this.sequence });
        return this.sequence;
      });
    });
  }

  documentOf(id: string): Promise<DocumentRow | undefined> {
    return Promise.resolve(this.kept.find((row) => row.id === id));
  }

  findDocuments(query: DocumentQuery): Promise<readonly DocumentRow[]> {
    return Promise.resolve(this.kept.filter(fitsQuery(query)));
  }

  documentsAfter(sequence: number, limit: number): Promise<readonly DocumentRow[]> {
    return Promise.resolve(this.kept.filter((row) => row.sequence > sequence).slice(0, limit));
  }

  lastDocument(): Promise<number> {
    return Promise.resolve(this.kept.at(-1)?.sequence ?? 0);
  }

  addStream(row: StreamRow): Promise<void> {
    return atOnce(() => {
      this.refuseErased(row.whose);
      this.streamRows.set(row.id, { row, closing: null, pieces: [] });
    });
  }

  addPieces(stream: string, from: number, pieces: readonly Uint8Array[]): Promise<void> {
    return atOnce(() => {
      const kept = this.open(stream);
      if (from !== kept.pieces.length) throw new StorageError('failed', `Piece ${from} has no place in ${stream}.`);
      kept.pieces.push(...pieces.map((piece) => piece.slice()));
    });
  }

  closeStream(row: StreamRow): Promise<void> {
    return atOnce(() => {
      const kept = this.open(row.id);
      this.closing += 1;
      kept.row = row;
      kept.closing = this.closing;
    });
  }

  streamOf(id: string): Promise<StreamRow | undefined> {
    return Promise.resolve(this.streamRows.get(id)?.row);
  }

  streams(): Promise<readonly StreamRow[]> {
    return Promise.resolve([...this.streamRows.values()].map(({ row }) => row));
  }

  closedAfter(after: number, limit: number): Promise<readonly ClosedRow[]> {
    const closed = [...this.streamRows.values()].flatMap(({ row, closing }) =>
      closing === null || closing <= after ? [] : [{ closing, stream: row }],
    );
    return Promise.resolve(closed.sort((a, b) => a.closing - b.closing).slice(0, limit));
  }

  pieces(stream: string): Promise<readonly PieceRow[]> {
    const pieces = this.streamRows.get(stream)?.pieces ?? [];
    return Promise.resolve(pieces.map((bytes, index) => ({ index, bytes: bytes.slice() })));
  }

  keys(whose?: readonly string[]): Promise<readonly KeyRow[]> {
    if (whose === undefined) return Promise.resolve([...this.keyRows.values()]);
    return Promise.resolve(whose.map((one) => this.keyRows.get(one)).filter((row) => row !== undefined));
  }

  addKey(row: KeyRow): Promise<KeyRow> {
    const kept = this.keyRows.get(row.whose);
    if (kept === undefined) this.keyRows.set(row.whose, row);
    return Promise.resolve(kept ?? row);
  }

  setting(name: string): Promise<Json | Uint8Array | undefined> {
    return Promise.resolve(structuredClone(this.settings.get(name)));
  }

  keepSetting(name: string, value: Json | Uint8Array): Promise<void> {
    this.settings.set(name, structuredClone(value));
    return Promise.resolve();
  }

  keepOutlines(outlines: ReadonlyMap<string, Uint8Array>, setting: OutlineSetting): Promise<boolean> {
    if (!sameBytes(this.settings.get(setting.name), setting.before)) return Promise.resolve(false);
    for (const [whose, outline] of outlines) {
      const row = this.keyRows.get(whose);
      if (row !== undefined && !row.erased) this.keyRows.set(whose, { ...row, outline });
    }
    this.settings.set(setting.name, setting.value);
    return Promise.resolve(true);
  }

  erase(whose: string, streams: readonly string[], expected: ErasedCounts, tombstone: NewRow): Promise<boolean> {
    return atOnce(() => {
      const documents = this.kept.filter((row) => row.whose === whose).length;
      const gone = [...this.streamRows].filter(([id, { row }]) => row.whose === whose || streams.includes(id));
      if (documents !== expected.documents || gone.length !== expected.streams) return false;
      this.kept = this.kept.filter((row) => row.whose !== whose);
      for (const [id] of gone) this.streamRows.delete(id);
      this.keyRows.set(whose, { whose, wrapped: null, erased: true });
      this.sequence += 1;
      this.kept.push({ ...tombstone, sequence: this.sequence });
      return true;
    });
  }

  problems(): Promise<[]> {
    return Promise.resolve([]);
  }

  close(): void {
    // nothing to let go of
  }

  private refuseErased(whose: string | null): void {
    if (whose !== null && this.keyRows.get(whose)?.erased === true) {
      throw new StorageError('erased', 'This person was erased: nothing is kept of them.');
    }
  }

  private open(stream: string): { row: StreamRow; closing: number | null; pieces: Uint8Array[] } {
    const kept = this.streamRows.get(stream);
    if (kept === undefined) throw new StorageError('erased', 'This recording was erased.');
    if (kept.closing !== null) throw new StorageError('already-closed', 'This recording was closed before.');
    return kept;
  }
}
