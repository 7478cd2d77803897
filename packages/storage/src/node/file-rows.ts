import { mkdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { Access, writing } from '../access.ts';
import type { Json } from '../document.ts';
import { StorageError } from '../errors.ts';
import { InTurn } from '../in-turn.ts';
import type { DocumentQuery, StoreProblem } from '../record-store.ts';
import { fitsQuery } from '../row-query.ts';
import type { ClosedRow, DocumentRow, ErasedCounts, KeyRow, NewRow, PieceRow, Rows, StreamRow } from '../rows.ts';
import { fileError, isMissing } from './file-error.ts';
import type { LogEntry } from './log-entry.ts';
import type { IndexedRow } from './log-index.ts';
import { PieceFiles } from './piece-files.ts';
import { logName, RecordLog } from './record-log.ts';
import { takeWriter } from './writer-file.ts';

/** Stores of this program that are being let go of, by their folder: whoever opens one again waits for that. */
const closing = new Map<string, Promise<void>>();

/** Rows in a folder of files. */
export class FileRows implements Rows {
  readonly access: Access;
  private readonly folder: string;
  private readonly log: RecordLog;
  private readonly files: PieceFiles;
  private readonly letGo: () => Promise<void>;
  /** the files are changed by one call after the other */
  private readonly turn = new InTurn();
  private isOver = false;

  private constructor(folder: string, access: Access, letGo: () => Promise<void>) {
    this.folder = folder;
    this.access = access;
    this.log = new RecordLog(folder);
    this.files = new PieceFiles(folder);
    this.letGo = letGo;
  }

  /** Opens a folder, and makes it unless it is only read; rejects with a {@link StorageError}. */
  static async open(folder: string, readOnly: boolean): Promise<FileRows> {
    try {
      await closing.get(folder);
      if (readOnly) await stat(join(folder, logName));
      else await mkdir(folder, { recursive: true });
      const taken = readOnly ? undefined : await takeWriter(folder);
      const why = readOnly ? 'asked' : 'written-elsewhere';
      const access = new Access(taken === undefined ? { writes: false, why } : writing);
      const rows = new FileRows(folder, access, taken ?? (() => Promise.resolve()));
      try {
        await rows.begin();
      } catch (error) {
        await rows.log.close();
        await taken?.();
        throw error;
      }
      return rows;
    } catch (error) {
      if (isMissing(error)) throw new StorageError('no-store', `There is no store in ${folder}.`, { cause: error });
      throw fileError(error);
    }
  }

  addDocuments(rows: readonly NewRow[]): Promise<readonly number[]> {
    return this.change(async ({ index }) => {
      const ids = new Set<string>();
      for (const { id, whose } of rows) {
        this.refuseErased(whose);
        if (index.byId.has(id) || ids.has(id)) throw new StorageError('failed', `There is a document ${id} already.`);
        ids.add(id);
      }
      const placed = rows.map((row, i): DocumentRow => ({ ...row, sequence: index.sequence + 1 + i }));
      await this.log.append({ op: 'documents', rows: placed });
      return placed.map(({ sequence }) => sequence);
    });
  }

  documentOf(id: string): Promise<DocumentRow | undefined> {
    return this.look(async ({ index }) => {
      const found = index.byId.get(id);
      return found === undefined ? undefined : (await this.load([found]))[0];
    });
  }

  findDocuments(query: DocumentQuery): Promise<readonly DocumentRow[]> {
    return this.look(({ index }) => this.load(index.documents.filter(fitsQuery(query))));
  }

  documentsAfter(sequence: number, limit: number): Promise<readonly DocumentRow[]> {
    return this.look(({ index }) =>
      this.load(index.documents.filter((row) => row.sequence > sequence).slice(0, limit)),
    );
  }

  lastDocument(): Promise<number> {
    return this.look(({ index }) => index.documents.at(-1)?.sequence ?? 0);
  }

  addStream(row: StreamRow): Promise<void> {
    return this.change(async () => {
      this.refuseErased(row.whose);
      await this.log.append({ op: 'stream', row });
    });
  }

  addPieces(stream: string, from: number, pieces: readonly Uint8Array[]): Promise<void> {
    return this.change(async () => {
      this.checkOpen(stream);
      await this.files.append(stream, from, pieces);
    });
  }

  closeStream(row: StreamRow): Promise<void> {
    return this.change(async ({ index }) => {
      this.checkOpen(row.id);
      await this.log.append({ op: 'closed', row, closing: index.closing + 1 });
      await this.files.letGo(row.id);
    });
  }

  streamOf(id: string): Promise<StreamRow | undefined> {
    return this.look(({ index }) => index.streams.get(id)?.row);
  }

  streams(): Promise<readonly StreamRow[]> {
    return this.look(({ index }) => [...index.streams.values()].map(({ row }) => row));
  }

  closedAfter(after: number, limit: number): Promise<readonly ClosedRow[]> {
    return this.look(({ index }) =>
      [...index.streams.values()]
        .flatMap(({ row, closing }) => (closing === null || closing <= after ? [] : [{ closing, stream: row }]))
        .sort((a, b) => a.closing - b.closing)
        .slice(0, limit),
    );
  }

  pieces(stream: string): Promise<readonly PieceRow[]> {
    return this.look(async () => (await this.files.read(stream)).pieces);
  }

  keys(whose?: readonly string[]): Promise<readonly KeyRow[]> {
    return this.look(({ index }) =>
      whose === undefined
        ? [...index.keys.values()]
        : whose.map((one) => index.keys.get(one)).filter((row) => row !== undefined),
    );
  }

  addKey(row: KeyRow): Promise<KeyRow> {
    return this.change(async ({ index }) => {
      const kept = index.keys.get(row.whose);
      if (kept === undefined) await this.log.append({ op: 'key', row });
      return kept ?? row;
    });
  }

  setting(name: string): Promise<Json | Uint8Array | undefined> {
    return this.look(({ index }) => structuredClone(index.settings.get(name)));
  }

  keepSetting(name: string, value: Json | Uint8Array): Promise<void> {
    return this.change(() => this.log.append({ op: 'setting', name, value }));
  }

  /** None: whoever reads files reads all of them, and an older version would not know the entry. */
  keepOutlines(): Promise<boolean> {
    return Promise.resolve(false);
  }

  erase(whose: string, streams: readonly string[], expected: ErasedCounts, tombstone: NewRow): Promise<boolean> {
    return this.change(async ({ index }) => {
      const documents = index.documents.filter((row) => row.whose === whose).length;
      const gone = new Set(
        [...index.streams].filter(([id, { row }]) => row.whose === whose || streams.includes(id)).map(([id]) => id),
      );
      if (documents !== expected.documents || gone.size !== expected.streams) return false;
      await this.log.rewrite(withoutPerson(whose, gone), [
        { op: 'key', row: { whose, wrapped: null, erased: true } },
        { op: 'erased', streams: [...gone], closing: index.closing },
        { op: 'documents', rows: [{ ...tombstone, sequence: index.sequence + 1 }] },
      ]);
      await this.files.remove([...gone]);
      return true;
    });
  }

  problems(): Promise<readonly StoreProblem[]> {
    return this.look(async ({ index, problems }) => {
      const open = [...index.streams.values()].filter(({ closing }) => closing === null);
      const half = await Promise.all(open.map(({ row }) => this.files.read(row.id)));
      const ofStreams = open.flatMap(({ row }, i) =>
        half[i]!.isHalf ? [{ id: row.id, code: 'half-written' as const }] : [],
      );
      return [...problems, ...ofStreams];
    });
  }

  close(): void {
    if (this.isOver) return;
    this.isOver = true;
    const over = this.turn.take(async () => {
      await this.files.close();
      await this.log.close();
      await this.letGo();
    });
    // a failure to let go is met by whoever comes next
    closing.set(
      this.folder,
      over.catch(() => undefined),
    );
  }

  private async begin(): Promise<void> {
    const { writes } = this.access.now;
    if (writes) await this.files.make();
    await this.log.open(writes);
    // an erasing that was cut off is brought to its end
    if (writes) await this.files.remove(this.log.index.erasedStreams);
  }

  private async change<T>(work: (log: RecordLog) => Promise<T>): Promise<T> {
    this.checkThere();
    this.access.check();
    try {
      return await this.turn.take(() => work(this.log));
    } catch (error) {
      throw fileError(error);
    }
  }

  private async look<T>(work: (log: RecordLog) => T | Promise<T>): Promise<T> {
    this.checkThere();
    try {
      // behind what is being written, so that it does not move under the reading
      return await this.turn.take(async () => {
        await this.log.catchUp();
        return work(this.log);
      });
    } catch (error) {
      throw fileError(error);
    }
  }

  private checkThere(): void {
    if (this.isOver) throw new StorageError('unavailable', 'This store was let go of.');
  }

  /** The rows themselves; one whose frame was altered comes with nothing that could be taken for its content. */
  private async load(found: readonly IndexedRow[]): Promise<readonly DocumentRow[]> {
    const frames = new Map<number, LogEntry | undefined>();
    const rows: DocumentRow[] = [];
    for (const { at, length, place, id, kind, about, whose, sequence } of found) {
      if (!frames.has(at)) frames.set(at, await this.log.entryAt(at, length));
      const entry = frames.get(at);
      const row = entry?.op === 'documents' ? entry.rows[place] : undefined;
      rows.push(row ?? { id, kind, about, whose, sequence, sealed: new Uint8Array(0) });
    }
    return rows;
  }

  private refuseErased(whose: string | null): void {
    if (whose !== null && this.log.index.keys.get(whose)?.erased === true) {
      throw new StorageError('erased', 'This person was erased: nothing is kept of them.');
    }
  }

  private checkOpen(stream: string): void {
    const kept = this.log.index.streams.get(stream);
    if (kept === undefined) throw new StorageError('erased', 'This recording was erased.');
    if (kept.closing !== null) throw new StorageError('already-closed', 'This recording was closed before.');
  }
}

/** An entry without what is of a person; null where nothing is left of it. */
function withoutPerson(whose: string, streams: ReadonlySet<string>): (entry: LogEntry) => LogEntry | null {
  return (entry) => {
    if (entry.op === 'documents') {
      const rows = entry.rows.filter((row) => row.whose !== whose);
      return rows.length === 0 ? null : { op: entry.op, rows };
    }
    if (entry.op === 'stream' || entry.op === 'closed') return streams.has(entry.row.id) ? null : entry;
    return entry.op === 'key' && entry.row.whose === whose ? null : entry;
  };
}
