import type { NewDocument, StoredDocument } from './document.ts';
import { StorageError } from './errors.ts';
import type { ByteWriter, DocumentQuery, RecordStore, StoredBytes, StoreProblem } from './record-store.ts';
import { hashOfBytes, newId, seal } from './seal.ts';

interface Stream {
  readonly pieces: Uint8Array[];
  sha256: string | null;
}

/** A store that lives as long as the program: for tests, and where the browser gives none. */
export class MemoryStore implements RecordStore {
  private readonly kept: StoredDocument[] = [];
  private readonly streams = new Map<string, Stream>();

  add(document: NewDocument): Promise<StoredDocument> {
    const stored = { ...seal(document), sequence: this.kept.length + 1 };
    this.kept.push(stored);
    return Promise.resolve(structuredClone(stored));
  }

  document(id: string): Promise<StoredDocument | undefined> {
    return Promise.resolve(structuredClone(this.kept.find((one) => one.id === id)));
  }

  documents({ kind, about }: DocumentQuery): Promise<readonly StoredDocument[]> {
    const found = this.kept.filter((one) => one.kind === kind && (about === undefined || one.about === about));
    return Promise.resolve(structuredClone(found));
  }

  openBytes(): Promise<ByteWriter> {
    const id = newId();
    const stream: Stream = { pieces: [], sha256: null };
    this.streams.set(id, stream);
    const whole = (): StorageError => new StorageError('already-closed', 'This recording was closed before.');
    return Promise.resolve({
      id,
      append: (piece) => {
        if (stream.sha256 !== null) return Promise.reject(whole());
        stream.pieces.push(piece.slice());
        return Promise.resolve();
      },
      close: () => {
        if (stream.sha256 !== null) return Promise.reject(whole());
        stream.sha256 = hashOfBytes(stream.pieces);
        return Promise.resolve(stream.sha256);
      },
    });
  }

  bytes(id: string): Promise<StoredBytes | undefined> {
    const stream = this.streams.get(id);
    if (stream === undefined) return Promise.resolve(undefined);
    return Promise.resolve({ id, pieces: stream.pieces.map((piece) => piece.slice()), sha256: stream.sha256 });
  }

  openStreams(): Promise<readonly string[]> {
    return Promise.resolve([...this.streams].filter(([, { sha256 }]) => sha256 === null).map(([id]) => id));
  }

  problems(): Promise<readonly StoreProblem[]> {
    return Promise.resolve([]);
  }

  close(): void {
    // nothing to let go of
  }
}
