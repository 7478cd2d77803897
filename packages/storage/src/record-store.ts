import type { BackupReport, BackupSource, RestoreReport } from './backup/backup-report.ts';
import type { Json, NewDocument, OwnedDocument, StoredDocument } from './document.ts';

/** A stream of opaque bytes as it is kept: pieces in order, closed or not. */
export interface StoredBytes {
  readonly id: string;
  /** pieces that are safe, in order */
  readonly pieces: readonly Uint8Array[];
  /** SHA-256 over all pieces once closed; null while open, and for ever when the program was killed */
  readonly sha256: string | null;
}

/** What is being recorded: every piece is safe once its promise is fulfilled. */
export interface ByteWriter {
  readonly id: string;
  /** Adds a piece after all earlier ones; rejects with a {@link StorageError}, and then nothing was added. */
  append(piece: Uint8Array): Promise<void>;
  /** Says that it is whole; gives the SHA-256 over all pieces. */
  close(): Promise<string>;
}

/** Which documents: those that fit everything that is told. */
export interface DocumentQuery {
  /** of this kind, or of one of these */
  readonly kind?: string | readonly string[];
  /** about this document, or about one of these */
  readonly about?: string | readonly string[];
  /** of this person: everything that is kept of them, in one reading */
  readonly whose?: string;
}

/** What a stream is, without its bytes. */
export interface StreamFacts {
  readonly id: string;
  readonly label: string;
  readonly whose: string | null;
  /** null while open */
  readonly sha256: string | null;
}

/** What came since a mark: documents in their order and streams in the order in which they were closed. */
export interface Changes {
  readonly documents: readonly OwnedDocument[];
  readonly streams: readonly StreamFacts[];
  /** where to go on from */
  readonly mark: string;
  /** whether there is more after the mark */
  readonly more: boolean;
}

/** A stream with its bytes, as another store kept it. */
export interface ForeignStream extends StreamFacts {
  readonly pieces: readonly Uint8Array[];
}

/** What became of something that another store kept: taken, known before, or refused. */
export type Adoption =
  | 'added'
  | 'already-there'
  /** the same id with another content */
  | 'conflict'
  /** its person was erased here */
  | 'erased'
  /** it does not match its own hash */
  | 'altered';

/** Who asks for something, and when: as in a document. */
export interface AskedBy {
  readonly author: string;
  readonly at: string;
}

/** What was destroyed with a person. Backups that were made before still hold it. */
export interface ErasureReceipt {
  readonly personId: string;
  readonly documents: number;
  readonly streams: number;
  /** bytes of the streams as they lay in the store */
  readonly bytes: number;
  /** what stays: the counts, who asked and when, and nothing of the person but the random id */
  readonly tombstone: StoredDocument;
}

/** Whether the store takes anything. */
export interface StoreAccess {
  readonly writes: boolean;
  /** why it only reads: it was asked to, or another window or program writes; null when it writes */
  readonly why: 'asked' | 'written-elsewhere' | null;
}

/** What makes outlines of people: a short value of each that follows from documents of theirs and from nothing else. */
export interface OutlineMaker {
  /** what makes them, with its version: those that another one made do not count */
  readonly made: string;
  /** kinds of the documents that they follow from */
  readonly kinds: readonly string[];
}

/** Up to where outlines hold; handed back when they are kept. */
export interface OutlineMark {
  /** what was kept about them when they were read: where it is another by then, somebody else kept some */
  readonly before: Uint8Array | undefined;
  /** place of the last document when they were read */
  readonly upTo: number;
}

/** Outlines as they are kept. They save reading documents, and tell nothing that these do not tell. */
export interface Outlines {
  /** those that still hold, by person */
  readonly kept: ReadonlyMap<string, Json>;
  /** people of whom none holds; null where it is not known who they are: everybody's are to be made anew */
  readonly stale: readonly string[] | null;
  /** null where none can be kept, as in a store that lies open */
  readonly mark: OutlineMark | null;
}

/** A backup that was made and checked. */
export interface BackupNote {
  /** when, with offset */
  readonly at: string;
  readonly documents: number;
  readonly streams: number;
  readonly bytes: number;
}

export interface RestoreOptions {
  /** opens a backup of another encrypted store */
  readonly secret?: string;
  /** takes what is whole of a backup that is not */
  readonly evenIfDamaged?: boolean;
}

/**
 * Documents and bytes, append only: nothing can be overwritten or taken away, except that a person can be erased as a whole. All
 * of it is asynchronous, so that a store that encrypts has the same calls.
 */
export interface RecordStore {
  /** Keeps a document under a new id of its own. */
  add(document: NewDocument): Promise<StoredDocument>;
  /** Keeps documents that belong together, in this order: all of them or none. */
  addAll(documents: readonly NewDocument[]): Promise<readonly StoredDocument[]>;
  /** The document; undefined when there is none. Rejects with `altered` when it does not match its hash. */
  document(id: string): Promise<StoredDocument | undefined>;
  /** Documents in the order in which they were added; one that is altered is left out and listed by {@link problems}. */
  documents(query: DocumentQuery): Promise<readonly StoredDocument[]>;
  /**
   * Outlines of people that are kept: what is short of each and follows from their documents, so that a list of them is there at
   * once, however much was measured. They are no part of the record: they are lost without harm, stand in no backup, and are
   * encrypted and erased with the person.
   */
  outlines(maker: OutlineMaker): Promise<Outlines>;
  /**
   * Keeps outlines of those that were {@link Outlines.stale}, of everybody where that was null; of a person of whom there is
   * nothing to tell it is null. Gives false where none were kept: the store lies open or only reads, or others were kept meanwhile.
   */
  keepOutlines(made: string, outlines: ReadonlyMap<string, Json>, mark: OutlineMark | null): Promise<boolean>;
  /**
   * Begins a stream of bytes; `label` says what it is, `whose` the person whose it is. A stream that is begun goes on to its end
   * even where the store is locked meanwhile.
   */
  openBytes(label: string, whose?: string | null): Promise<ByteWriter>;
  /** The bytes; undefined when there are none of this id. */
  bytes(id: string): Promise<StoredBytes | undefined>;
  /** Ids of streams that were never closed, oldest first: a set during which the program was killed. */
  openStreams(): Promise<readonly string[]>;
  /** What is damaged; loading never fails for it. */
  problems(): Promise<readonly StoreProblem[]>;
  close(): void;

  /** Whether it writes, and why not. */
  readonly access: StoreAccess;
  /** Tells whenever that changes, as when the other window is closed; gives what ends the telling. */
  onAccess(listener: (access: StoreAccess) => void): () => void;
  /** What came since a mark, the oldest first, at most `limit` of documents and of streams; from the beginning without a mark. */
  changesSince(mark: string | null, limit?: number): Promise<Changes>;
  /** Takes documents that another store kept, under their own ids; tells of each what became of it. */
  adopt(documents: readonly OwnedDocument[]): Promise<readonly Adoption[]>;
  /** Takes a stream that another store kept. One that is here in part, as after a restoring that was cut off, is completed. */
  adoptStream(stream: ForeignStream): Promise<Adoption>;
  /** Destroys everything that is kept of a person, and the key to it. Nothing of them is taken again, from a backup neither. */
  erase(personId: string, by: AskedBy): Promise<ErasureReceipt>;
  /** A backup of everything, made while it is read: one file, encrypted where the store is. */
  backup(): AsyncIterable<Uint8Array>;
  /**
   * What of a backup is whole, such as of one that was just written. One of another encrypted store needs the passphrase or the
   * recovery code that the store had when it was made.
   */
  checkBackup(source: BackupSource, secret?: string): Promise<BackupReport>;
  /** Takes what a backup holds and is not here yet; rejects with a {@link DamagedBackupError} where it is not whole. */
  restore(source: BackupSource, options?: RestoreOptions): Promise<RestoreReport>;
  /** Notes that a backup was made and checked. */
  noteBackup(note: BackupNote): Promise<void>;
  /** The last backup that was noted; null without one. */
  lastBackup(): Promise<BackupNote | null>;
}

export interface StoreProblem {
  readonly id: string;
  readonly code:
    | 'altered'
    | 'piece-missing'
    /** the key to it is not there */
    | 'key-missing'
    /** it was being written when the power went, and had not been acknowledged */
    | 'half-written';
}

/** Body of the document of kind `clock-set-back`: the sequence orders what came, whatever its times say. */
export type ClockSetBack = { readonly wasAt: string; readonly isAt: string } & { readonly [key: string]: Json };
