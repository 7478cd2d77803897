import { type Database, openDatabase, type StoreSchema, storageError } from './database.ts';
import type { NewDocument, StoredDocument } from './document.ts';
import { StorageError } from './errors.ts';
import type { ByteWriter, DocumentQuery, RecordStore, StoredBytes, StoreProblem } from './record-store.ts';
import { hashOfBytes, isWhole, newId, seal } from './seal.ts';

/** Safe means on the disk, and not only in the cache of the system. */
const safely = { durability: 'strict' } as const;

async function ours<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw storageError(error);
  }
}

/** The store of the browser. */
export class IndexedDbStore implements RecordStore {
  private readonly database: Database;

  private constructor(database: Database) {
    this.database = database;
  }

  /** Opens the store of a name; rejects with a {@link StorageError}. */
  static async open(name: string): Promise<IndexedDbStore> {
    return new IndexedDbStore(await openDatabase(name));
  }

  add(document: NewDocument): Promise<StoredDocument> {
    return ours(async () => {
      const sealed = seal(document);
      const change = this.database.transaction('documents', 'readwrite', safely);
      const [sequence] = await Promise.all([change.store.add(sealed), change.done]);
      return { ...sealed, sequence };
    });
  }

  document(id: string): Promise<StoredDocument | undefined> {
    return ours(async () => {
      const found = (await this.database.getFromIndex('documents', 'id', id)) as StoredDocument | undefined;
      if (found !== undefined && !isWhole(found)) {
        throw new StorageError('altered', `The document ${id} does not match its hash.`);
      }
      return found;
    });
  }

  documents({ kind, about }: DocumentQuery): Promise<readonly StoredDocument[]> {
    return ours(async () => {
      const found =
        about === undefined
          ? await this.database.getAllFromIndex('documents', 'kind', kind)
          : await this.database.getAllFromIndex('documents', 'kind-about', [kind, about]);
      return (found as StoredDocument[]).filter(isWhole).sort((a, b) => a.sequence - b.sequence);
    });
  }

  openBytes(label: string): Promise<ByteWriter> {
    return ours(async () => {
      const id = newId();
      const change = this.database.transaction('streams', 'readwrite', safely);
      await Promise.all([change.store.add({ id, label, sha256: null, pieces: null }), change.done]);
      return this.writer(id);
    });
  }

  bytes(id: string): Promise<StoredBytes | undefined> {
    return ours(async () => {
      const stream = await this.database.getFromIndex('streams', 'id', id);
      if (stream === undefined) return undefined;
      const rows = await this.rows(id);
      return { id, pieces: rows.map(({ bytes }) => bytes), sha256: stream.sha256 };
    });
  }

  openStreams(): Promise<readonly string[]> {
    return ours(async () => {
      const streams = await this.database.getAll('streams');
      return streams.filter(({ sha256 }) => sha256 === null).map(({ id }) => id);
    });
  }

  problems(): Promise<readonly StoreProblem[]> {
    return ours(async () => {
      const documents = (await this.database.getAll('documents')) as StoredDocument[];
      const altered = documents.filter((one) => !isWhole(one)).map(({ id }) => ({ id, code: 'altered' as const }));
      const streams = await this.database.getAll('streams');
      const damaged: StoreProblem[] = [];
      for (const { id, pieces, sha256 } of streams) {
        const rows = await this.rows(id);
        const isMissing = rows.some(({ index }, i) => index !== i) || (sha256 !== null && rows.length !== pieces);
        if (isMissing) damaged.push({ id, code: 'piece-missing' });
        else if (sha256 !== null && hashOfBytes(rows.map(({ bytes }) => bytes)) !== sha256) {
          damaged.push({ id, code: 'altered' });
        }
      }
      return [...altered, ...damaged];
    });
  }

  close(): void {
    this.database.close();
  }

  private rows(stream: string): Promise<StoreSchema['pieces']['value'][]> {
    return this.database.getAll('pieces', IDBKeyRange.bound([stream, 0], [stream, Infinity]));
  }

  private writer(id: string): ByteWriter {
    const { database } = this;
    let next = 0;
    let closed = false;
    // pieces are written one after the other, whether or not the caller waits
    let last: Promise<unknown> = Promise.resolve();
    const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
      const turn = last.then(() => ours(work));
      last = turn.catch(() => undefined);
      return turn;
    };
    const open = (): void => {
      if (closed) throw new StorageError('already-closed', 'This recording was closed before.');
    };
    return {
      id,
      append: (piece) => {
        const bytes = piece.slice();
        return inTurn(async () => {
          open();
          const change = database.transaction('pieces', 'readwrite', safely);
          await Promise.all([change.store.add({ stream: id, index: next, bytes }), change.done]);
          next += 1;
        });
      },
      close: () =>
        inTurn(async () => {
          open();
          const rows = await this.rows(id);
          const sha256 = hashOfBytes(rows.map(({ bytes }) => bytes));
          const change = database.transaction('streams', 'readwrite', safely);
          const cursor = await change.store.index('id').openCursor(id);
          await Promise.all([cursor?.update({ ...cursor.value, sha256, pieces: next }), change.done]);
          closed = true;
          return sha256;
        }),
    };
  }
}
