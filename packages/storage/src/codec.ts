import type { BackupKeys } from './backup/backup-keys.ts';
import type { Json, StoredDocument } from './document.ts';
import type { StreamFacts } from './record-store.ts';
import type { DocumentRow, KeyRow, NewRow, PieceRow, StreamRow } from './rows.ts';

/** Why a row cannot be read. */
export type Unreadable = 'altered' | 'key-missing';

/** Makes the rows of one stream; goes on where the store is locked meanwhile, so that nothing recorded is lost. */
export interface StreamSealer {
  readonly opened: StreamRow;
  piece(index: number, bytes: Uint8Array): Promise<Uint8Array>;
  closed(sha256: string, pieces: number): Promise<StreamRow>;
}

/** Makes outlines of people unreadable, and the other way round. */
export interface OutlineCodec {
  /** by person; of those whose key is not there none */
  seal(outlines: ReadonlyMap<string, Json>, made: string): Promise<ReadonlyMap<string, Uint8Array>>;
  /** those that lie in rows of keys, were made by this one and can be read */
  open(rows: readonly KeyRow[], made: string): Promise<ReadonlyMap<string, Json>>;
}

/** Makes rows of what is kept, and the other way round: open, or encrypted. */
export interface Codec {
  /** Throws `locked` where nothing can be read. */
  check(): void;
  sealDocument(document: Omit<StoredDocument, 'sequence'>, whose: string | null): Promise<NewRow>;
  /** Each document, or why it cannot be read, in the order of the rows. */
  openDocuments(rows: readonly DocumentRow[]): Promise<readonly (StoredDocument | Unreadable)[]>;
  sealStream(stream: {
    readonly id: string;
    readonly label: string;
    readonly whose: string | null;
  }): Promise<StreamSealer>;
  openStream(row: StreamRow): Promise<StreamFacts | Unreadable>;
  /** Each piece, or why it cannot be read. */
  openPieces(row: StreamRow, pieces: readonly PieceRow[]): Promise<readonly (Uint8Array | Unreadable)[]>;
  sealSetting(name: string, value: Json): Promise<Json | Uint8Array>;
  openSetting(name: string, value: Json | Uint8Array): Promise<{ readonly value: Json } | Unreadable>;
  /** null where the store lies open: its documents are as quick to read */
  readonly outlines: OutlineCodec | null;
  /** A key for a new backup, and how it is kept in it; null where the store lies open, and so does its backup. */
  newBackupKey(backup: string): Promise<{ readonly key: CryptoKey; readonly keys: BackupKeys } | null>;
  /** The key of a backup of this store; undefined where it is of another one. */
  openBackupKey(keys: BackupKeys, backup: string): Promise<CryptoKey | undefined>;
  /** Forgets the key of a person who was erased. */
  forget(whose: string): void;
}
