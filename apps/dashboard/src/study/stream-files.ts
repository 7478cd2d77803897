import type { RecordStore } from '@surae/storage';

/** Where the bytes of a file lie: behind others in one stream. */
export interface Stretch {
  readonly bytesId: string;
  readonly from: number;
  readonly byteLength: number;
}

/** A stream is closed once it holds so much: a file is read out of it without reading everything [bytes]. */
const FULL = 4 << 20;

/** Pieces that are written at once [bytes]. */
const PIECE = 1 << 18;

/** Writes files one behind the other into streams: thousands of small files are a few streams. */
export class StreamFiles {
  private readonly store: Pick<RecordStore, 'openBytes'>;
  private readonly label: string;
  private open: { readonly writer: Awaited<ReturnType<RecordStore['openBytes']>>; at: number } | undefined;

  constructor(store: Pick<RecordStore, 'openBytes'>, label: string) {
    this.store = store;
    this.label = label;
  }

  /** Writes a file; its stretch counts once {@link close} is fulfilled. */
  async write(bytes: Uint8Array): Promise<Stretch> {
    this.open ??= { writer: await this.store.openBytes(this.label), at: 0 };
    const { writer, at: from } = this.open;
    for (let at = 0; at < bytes.length; at += PIECE) await writer.append(bytes.slice(at, at + PIECE));
    this.open.at += bytes.length;
    if (this.open.at >= FULL) await this.close();
    return { bytesId: writer.id, from, byteLength: bytes.length };
  }

  async close(): Promise<void> {
    const { open } = this;
    this.open = undefined;
    await open?.writer.close();
  }
}

/** Reads files out of streams; the stream that was read last is at hand, because its neighbours come next. */
export class StretchReader {
  private readonly store: Pick<RecordStore, 'bytes'>;
  private last: { readonly id: string; readonly bytes: Promise<Uint8Array | undefined> } | undefined;

  constructor(store: Pick<RecordStore, 'bytes'>) {
    this.store = store;
  }

  /** The bytes; undefined where the stream is gone or damaged. */
  async read({ bytesId, from, byteLength }: Stretch): Promise<Uint8Array | undefined> {
    if (this.last?.id !== bytesId) this.last = { id: bytesId, bytes: this.whole(bytesId) };
    const bytes = await this.last.bytes;
    if (bytes === undefined || bytes.length < from + byteLength) return undefined;
    return bytes.slice(from, from + byteLength);
  }

  private async whole(id: string): Promise<Uint8Array | undefined> {
    const kept = await this.store.bytes(id);
    if (kept === undefined || kept.sha256 === null) return undefined;
    const bytes = new Uint8Array(kept.pieces.reduce((sum, { length }) => sum + length, 0));
    let at = 0;
    for (const piece of kept.pieces) {
      bytes.set(piece, at);
      at += piece.length;
    }
    return bytes;
  }
}
