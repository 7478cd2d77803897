import { Access } from './access.ts';
import { storageError } from './database.ts';
import type { Database } from './database-schema.ts';
import type { Json } from './document.ts';
import { StorageError } from './errors.ts';
import { findRows } from './indexed-db-query.ts';
import type { DocumentQuery } from './record-store.ts';
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

/** Safe means on the disk, and not only in the cache of the system. */
const safely = { durability: 'strict' } as const;

/** Above this many keys all of them are read at once, which is quicker; measured. */
const singleKeys = 20;

async function ours<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw storageError(error);
  }
}

/** Where something of a person lies. */
const erasable = ['documents', 'streams', 'pieces', 'closings', 'keys'] as const;

const refusal = (isErased: boolean): StorageError =>
  isErased
    ? new StorageError('erased', 'This person was erased: nothing is kept of them.')
    : new StorageError('already-closed', 'This recording was closed before.');

/** Rows in the database of the browser. */
export class IndexedDbRows implements Rows {
  readonly access: Access;
  private readonly database: Database;
  private readonly letGo: () => void;

  constructor(database: Database, access = new Access(), letGo: () => void = () => {}) {
    this.database = database;
    this.access = access;
    this.letGo = letGo;
  }

  addDocuments(rows: readonly NewRow[]): Promise<readonly number[]> {
    return ours(async () => {
      const change = this.database.transaction(['documents', 'keys'], 'readwrite', safely);
      const isErased = (whose: string): Promise<boolean> =>
        change
          .objectStore('keys')
          .get(whose)
          .then((key) => key?.erased === true);
      const owners = [...new Set(rows.map(({ whose }) => whose).filter((whose) => whose !== null))];
      const written = (async () => {
        if ((await Promise.all(owners.map(isErased))).includes(true)) throw refusal(true);
        return Promise.all(rows.map((row) => change.objectStore('documents').add(row)));
      })();
      return this.settled(written, change);
    });
  }

  documentOf(id: string): Promise<DocumentRow | undefined> {
    return ours(async () => (await this.database.getFromIndex('documents', 'id', id)) as DocumentRow | undefined);
  }

  findDocuments(query: DocumentQuery): Promise<readonly DocumentRow[]> {
    return ours(() => findRows(this.database, query));
  }

  documentsAfter(sequence: number, limit: number): Promise<readonly DocumentRow[]> {
    const after = IDBKeyRange.lowerBound(sequence, true);
    return ours(async () => (await this.database.getAll('documents', after, limit)) as DocumentRow[]);
  }

  lastDocument(): Promise<number> {
    return ours(async () => {
      const cursor = await this.database.transaction('documents').store.openKeyCursor(null, 'prev');
      return cursor?.primaryKey ?? 0;
    });
  }

  addStream(row: StreamRow): Promise<void> {
    return ours(async () => {
      const change = this.database.transaction(['streams', 'keys'], 'readwrite', safely);
      const written = (async () => {
        const key = row.whose === null ? undefined : await change.objectStore('keys').get(row.whose);
        if (key?.erased === true) throw refusal(true);
        await change.objectStore('streams').add(row);
      })();
      await this.settled(written, change);
    });
  }

  addPieces(stream: string, from: number, pieces: readonly Uint8Array[]): Promise<void> {
    return ours(async () => {
      const change = this.database.transaction(['streams', 'pieces'], 'readwrite', safely);
      const written = (async () => {
        const row = await change.objectStore('streams').index('id').get(stream);
        if (row?.pieces !== null) throw refusal(row === undefined);
        const rows = pieces.map((bytes, i) => ({ stream, index: from + i, bytes }));
        await Promise.all(rows.map((one) => change.objectStore('pieces').add(one)));
      })();
      await this.settled(written, change);
    });
  }

  closeStream(row: StreamRow): Promise<void> {
    return ours(async () => {
      const change = this.database.transaction(['streams', 'closings'], 'readwrite', safely);
      const written = (async () => {
        const cursor = await change.objectStore('streams').index('id').openCursor(row.id);
        if (cursor?.value.pieces !== null) throw refusal(cursor === null);
        await cursor.update({ ...row, sequence: cursor.value.sequence! });
        await change.objectStore('closings').add({ stream: row.id });
      })();
      await this.settled(written, change);
    });
  }

  streamOf(id: string): Promise<StreamRow | undefined> {
    return ours(() => this.database.getFromIndex('streams', 'id', id));
  }

  streams(): Promise<readonly StreamRow[]> {
    return ours(() => this.database.getAll('streams'));
  }

  closedAfter(closing: number, limit: number): Promise<readonly ClosedRow[]> {
    return ours(async () => {
      const reading = this.database.transaction(['closings', 'streams']);
      const after = IDBKeyRange.lowerBound(closing, true);
      const closings = await reading.objectStore('closings').getAll(after, limit);
      const byId = reading.objectStore('streams').index('id');
      const rows = await Promise.all(closings.map(({ stream }) => byId.get(stream)));
      return closings.flatMap((one, i) => (rows[i] === undefined ? [] : [{ closing: one.closing!, stream: rows[i] }]));
    });
  }

  pieces(stream: string): Promise<readonly PieceRow[]> {
    return ours(() => this.database.getAll('pieces', piecesOf(stream)));
  }

  keys(whose?: readonly string[]): Promise<readonly KeyRow[]> {
    return ours(async () => {
      if (whose === undefined) return this.database.getAll('keys');
      if (whose.length > singleKeys) {
        const wanted = new Set(whose);
        return (await this.database.getAll('keys')).filter((row) => wanted.has(row.whose));
      }
      const store = this.database.transaction('keys').store;
      return (await Promise.all(whose.map((one) => store.get(one)))).filter((row) => row !== undefined);
    });
  }

  addKey(row: KeyRow): Promise<KeyRow> {
    return ours(async () => {
      const change = this.database.transaction('keys', 'readwrite', safely);
      const written = (async () => {
        const kept = await change.store.get(row.whose);
        if (kept === undefined) await change.store.add(row);
        return kept ?? row;
      })();
      return this.settled(written, change);
    });
  }

  setting(name: string): Promise<Json | Uint8Array | undefined> {
    return ours(async () => (await this.database.get('settings', name))?.value);
  }

  keepSetting(name: string, value: Json | Uint8Array): Promise<void> {
    return ours(async () => {
      const change = this.database.transaction('settings', 'readwrite', safely);
      await this.settled(change.store.put({ name, value }), change);
    });
  }

  keepOutlines(outlines: ReadonlyMap<string, Uint8Array>, setting: OutlineSetting): Promise<boolean> {
    return ours(async () => {
      const { name, before, value } = setting;
      const change = this.database.transaction(['keys', 'settings'], 'readwrite', { durability: 'relaxed' });
      const keys = change.objectStore('keys');
      const keep = async (whose: string, outline: Uint8Array): Promise<void> => {
        const row = await keys.get(whose);
        if (row !== undefined && !row.erased) await keys.put({ ...row, outline });
      };
      const written = (async () => {
        const settings = change.objectStore('settings');
        if (!sameBytes((await settings.get(name))?.value, before)) return false;
        await Promise.all([...[...outlines].map(([whose, one]) => keep(whose, one)), settings.put({ name, value })]);
        return true;
      })();
      return this.settled(written, change);
    });
  }

  erase(whose: string, streams: readonly string[], expected: ErasedCounts, tombstone: NewRow): Promise<boolean> {
    return ours(async () => {
      const change = this.database.transaction([...erasable], 'readwrite', safely);
      const written = (async () => {
        const documents = await change.objectStore('documents').index('whose').getAllKeys(whose);
        const rows = (await change.objectStore('streams').getAll()).filter(
          (row) => row.whose === whose || streams.includes(row.id),
        );
        const gone = new Set(rows.map(({ id }) => id));
        const closings = (await change.objectStore('closings').getAll()).filter(({ stream }) => gone.has(stream));
        if (documents.length !== expected.documents || rows.length !== expected.streams) return false;
        await Promise.all([
          ...documents.map((sequence) => change.objectStore('documents').delete(sequence)),
          ...rows.map(({ sequence }) => change.objectStore('streams').delete(sequence!)),
          ...rows.map(({ id }) => change.objectStore('pieces').delete(piecesOf(id))),
          ...closings.map(({ closing }) => change.objectStore('closings').delete(closing!)),
          change.objectStore('keys').put({ whose, wrapped: null, erased: true }),
          change.objectStore('documents').add(tombstone),
        ]);
        return true;
      })();
      return this.settled(written, change);
    });
  }

  problems(): Promise<[]> {
    return Promise.resolve([]);
  }

  close(): void {
    this.letGo();
    this.database.close();
  }

  /** Waits until what was written is on the disk; takes everything back where a part of it failed. */
  private async settled<T>(written: Promise<T>, change: { readonly done: Promise<void>; abort(): void }): Promise<T> {
    const done = change.done;
    done.catch(() => undefined);
    try {
      const result = await written;
      await done;
      return result;
    } catch (error) {
      try {
        change.abort();
      } catch {
        // it is over already, by the error itself
      }
      throw error;
    }
  }
}

function piecesOf(stream: string): IDBKeyRange {
  return IDBKeyRange.bound([stream, 0], [stream, Infinity]);
}
