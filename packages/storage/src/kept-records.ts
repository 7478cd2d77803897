import { adoptDocuments, adoptStream } from './adopt.ts';
import { backupKeyBySecret } from './backup/backup-keys.ts';
import type { BackupReport, BackupSource, RestoreReport } from './backup/backup-report.ts';
import { checkBackup } from './backup/check-backup.ts';
import type { BackupOpener } from './backup/read-backup.ts';
import { restoreBackup } from './backup/restore-backup.ts';
import { writeBackup } from './backup/write-backup.ts';
import { changesSince } from './changes.ts';
import { ClockWatch } from './clock-watch.ts';
import type { Codec } from './codec.ts';
import type { Json, NewDocument, OwnedDocument, StoredDocument } from './document.ts';
import { erasePerson } from './erasure.ts';
import { StorageError } from './errors.ts';
import { InTurn } from './in-turn.ts';
import { keepOutlines, readOutlines } from './outlines.ts';
import { problemsOf } from './problems.ts';
import { isReadable } from './readable.ts';
import type {
  Adoption,
  AskedBy,
  BackupNote,
  ByteWriter,
  Changes,
  DocumentQuery,
  ErasureReceipt,
  ForeignStream,
  OutlineMaker,
  OutlineMark,
  Outlines,
  RecordStore,
  RestoreOptions,
  StoreAccess,
  StoredBytes,
  StoreProblem,
} from './record-store.ts';
import type { NewRow, Rows } from './rows.ts';
import { isId, newId, seal } from './seal.ts';
import { openWriter } from './stream-writer.ts';

export interface RecordsOptions {
  /** the time by the clock of the machine, with offset; with it, a clock that was set back is noted */
  readonly isoNow?: () => string;
}

/** A document without its place, and the person whose it is. */
interface Owned {
  readonly sealed: Omit<StoredDocument, 'sequence'>;
  readonly whose: string | null;
}

const noName = (): RangeError => new RangeError('The id of a person or null was expected; an empty text came.');

/** A store of records over rows: what is written is made by one codec, and read by it. */
export class KeptRecords implements RecordStore {
  private readonly rows: Rows;
  private readonly codec: Codec;
  private readonly clock: ClockWatch | null;
  /** documents are added one after the other, whether or not the caller waits */
  private readonly turn = new InTurn();

  constructor(rows: Rows, codec: Codec, { isoNow }: RecordsOptions = {}) {
    this.rows = rows;
    this.codec = codec;
    this.clock = isoNow === undefined ? null : new ClockWatch(isoNow, rows, codec);
  }

  get access(): StoreAccess {
    return this.rows.access.now;
  }

  onAccess(listener: (access: StoreAccess) => void): () => void {
    return this.rows.access.listen(listener);
  }

  async add(document: NewDocument): Promise<StoredDocument> {
    const [stored] = await this.addAll([document]);
    return stored!;
  }

  async addAll(documents: readonly NewDocument[]): Promise<readonly StoredDocument[]> {
    this.checkWriting();
    const sealed = documents.map((document) => seal(document));
    return this.turn.take(async () => {
      await this.clock?.look((note) => this.keep([{ sealed: seal(note), whose: null }]));
      const owned: Owned[] = [];
      for (const [i, document] of documents.entries()) {
        owned.push({ sealed: sealed[i]!, whose: await this.whoseOf(document, sealed[i]!.id) });
      }
      return this.keep(owned);
    });
  }

  async document(id: string): Promise<StoredDocument | undefined> {
    this.codec.check();
    const row = await this.rows.documentOf(id);
    if (row === undefined) return undefined;
    const [document] = await this.codec.openDocuments([row]);
    if (document === undefined || !isReadable(document)) {
      throw new StorageError('altered', `The document ${id} does not match its hash.`);
    }
    return document;
  }

  async documents(query: DocumentQuery): Promise<readonly StoredDocument[]> {
    this.codec.check();
    const rows = await this.rows.findDocuments(query);
    return (await this.codec.openDocuments(rows)).filter(isReadable);
  }

  outlines(maker: OutlineMaker): Promise<Outlines> {
    this.codec.check();
    return readOutlines(this.rows, this.codec, maker);
  }

  async keepOutlines(made: string, outlines: ReadonlyMap<string, Json>, mark: OutlineMark | null): Promise<boolean> {
    this.codec.check();
    if (mark === null || !this.access.writes) return false;
    return keepOutlines(this.rows, this.codec, made, outlines, mark);
  }

  async openBytes(label = '', whose: string | null = null): Promise<ByteWriter> {
    this.checkWriting();
    if (whose === '') throw noName();
    return openWriter(this.rows, this.codec, { id: newId(), label, whose });
  }

  async bytes(id: string): Promise<StoredBytes | undefined> {
    this.codec.check();
    const row = await this.rows.streamOf(id);
    if (row === undefined) return undefined;
    const stream = await this.codec.openStream(row);
    const pieces = await this.codec.openPieces(row, await this.rows.pieces(id));
    // what cannot be opened is left out: its hash tells of a closed stream, the numbers of its samples of an open one
    const sha256 = isReadable(stream) ? stream.sha256 : null;
    return { id, pieces: pieces.filter(isReadable), sha256 };
  }

  async openStreams(): Promise<readonly string[]> {
    this.codec.check();
    return (await this.rows.streams()).filter(({ pieces }) => pieces === null).map(({ id }) => id);
  }

  problems(): Promise<readonly StoreProblem[]> {
    this.codec.check();
    return problemsOf(this.rows, this.codec);
  }

  changesSince(mark: string | null, limit = 200): Promise<Changes> {
    this.codec.check();
    return changesSince(this.rows, this.codec, mark, limit);
  }

  async adopt(documents: readonly OwnedDocument[]): Promise<readonly Adoption[]> {
    this.checkWriting();
    return this.turn.take(() => adoptDocuments(this.rows, this.codec, documents));
  }

  async adoptStream(stream: ForeignStream): Promise<Adoption> {
    this.checkWriting();
    return this.turn.take(() => adoptStream(this.rows, this.codec, stream));
  }

  async erase(personId: string, by: AskedBy): Promise<ErasureReceipt> {
    this.checkWriting();
    return this.turn.take(() => erasePerson(this.rows, this.codec, personId, by));
  }

  async *backup(): AsyncGenerator<Uint8Array, void, undefined> {
    this.codec.check();
    yield* writeBackup(this.rows, this.codec);
  }

  checkBackup(source: BackupSource, secret?: string): Promise<BackupReport> {
    this.codec.check();
    return checkBackup(source(), this.opener(secret));
  }

  async restore(source: BackupSource, { secret, evenIfDamaged = false }: RestoreOptions = {}): Promise<RestoreReport> {
    this.checkWriting();
    return restoreBackup(this, source, this.opener(secret), evenIfDamaged);
  }

  async noteBackup(note: BackupNote): Promise<void> {
    this.checkWriting();
    await this.rows.keepSetting('last-backup', await this.codec.sealSetting('last-backup', { ...note }));
  }

  async lastBackup(): Promise<BackupNote | null> {
    this.codec.check();
    const kept = await this.rows.setting('last-backup');
    if (kept === undefined) return null;
    const note = await this.codec.openSetting('last-backup', kept);
    return isReadable(note) ? (note.value as unknown as BackupNote) : null;
  }

  close(): void {
    this.rows.close();
  }

  private opener(secret: string | undefined): BackupOpener {
    return async (keys, backup) => {
      const own = await this.codec.openBackupKey(keys, backup);
      if (own !== undefined) return own;
      if (secret !== undefined) return backupKeyBySecret(keys, backup, secret);
      throw new StorageError('locked', 'This backup is encrypted: it is opened by the passphrase that its store had.');
    };
  }

  private checkWriting(): void {
    this.codec.check();
    this.rows.access.check();
  }

  private async keep(owned: readonly Owned[]): Promise<readonly StoredDocument[]> {
    if (owned.length === 0) return [];
    const rows: NewRow[] = [];
    for (const { sealed, whose } of owned) rows.push(await this.codec.sealDocument(sealed, whose));
    const sequences = await this.rows.addDocuments(rows);
    return owned.map(({ sealed }, i) => structuredClone({ ...sealed, sequence: sequences[i]! }));
  }

  private async whoseOf({ whose, kind, about }: NewDocument, id: string): Promise<string | null> {
    if (whose === '') throw noName();
    if (whose !== undefined) return whose;
    if (kind === 'person') return id;
    if (about === null) return null;
    const row = await this.rows.documentOf(about);
    if (row === undefined && isId(about)) {
      const keys = await this.rows.keys([about]);
      const isErased = keys.length > 0 ? keys[0]!.erased : (await this.rows.keys()).some(({ erased }) => erased);
      // it may be about something that went with a person: better refused than kept for nobody
      if (isErased) throw new StorageError('erased', 'What this is about was erased with a person.');
    }
    return row?.whose ?? null;
  }
}
