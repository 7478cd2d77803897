import { type BackupKeys, newBackupKey, openBackupKey } from '../backup/backup-keys.ts';
import type { Codec, OutlineCodec, StreamSealer, Unreadable } from '../codec.ts';
import type { Json, StoredDocument } from '../document.ts';
import type { StreamFacts } from '../record-store.ts';
import type { DocumentRow, KeyRow, NewRow, PieceRow, RowKeys, StreamRow } from '../rows.ts';
import { type Belonging, decrypt, encrypt } from './envelope.ts';
import type { KeyRing } from './key-ring.ts';
import { pack, unpack } from './packed.ts';
import { isWholeByPlatform } from './platform-hash.ts';
import type { VaultHeader } from './root.ts';

const encoder = new TextEncoder();
const decoder = new TextDecoder();

const bytesOf = (value: Json): Uint8Array => pack(encoder.encode(JSON.stringify(value)));
const jsonOf = (packed: Uint8Array): Json => JSON.parse(decoder.decode(unpack(packed))) as Json;

/** Rows that lie encrypted, each under the key of the person whose it is, and bound to its place. */
export class SealedCodec implements Codec {
  private readonly ring: KeyRing;
  /** what the store says about its keys at present: a passphrase may be changed at any time */
  private readonly header: () => Promise<VaultHeader>;

  readonly outlines: OutlineCodec = {
    seal: (outlines, made) => this.sealOutlines(outlines, made),
    open: (rows, made) => this.openOutlines(rows, made),
  };

  constructor(ring: KeyRing, header: () => Promise<VaultHeader>) {
    this.ring = ring;
    this.header = header;
  }

  check(): void {
    this.ring.check();
  }

  forget(whose: string): void {
    this.ring.forget(whose);
  }

  async sealDocument(document: Omit<StoredDocument, 'sequence'>, whose: string | null): Promise<NewRow> {
    const { id, kind, about, schema, author, at, body, hash } = document;
    const key = await this.ring.keyOf(whose);
    const belongsTo = this.document({ id, kind, about, whose });
    const sealed = await encrypt(key, bytesOf({ schema, author, at, body, hash }), belongsTo);
    return { id, kind, about, whose, sealed };
  }

  async openDocuments(rows: readonly DocumentRow[]): Promise<readonly (StoredDocument | Unreadable)[]> {
    const keyOf = await this.ring.keysOf(rows.map(({ whose }) => whose));
    const opened = await Promise.all(
      rows.map(async (row): Promise<StoredDocument | Unreadable> => {
        const { id, kind, about, whose, sequence } = row;
        const key = keyOf(whose);
        if (key === undefined) return 'key-missing';
        const content = 'sealed' in row ? await this.json(key, row.sealed, this.document(row)) : undefined;
        if (content === undefined) return 'altered';
        const { schema, author, at, body, hash } = content as Pick<
          StoredDocument,
          'schema' | 'author' | 'at' | 'body' | 'hash'
        >;
        const document = { id, kind, schema, about, author, at, body, hash, sequence };
        return (await isWholeByPlatform(document)) ? document : 'altered';
      }),
    );
    // locked meanwhile: nothing is given away
    this.check();
    return opened;
  }

  async sealStream(stream: {
    readonly id: string;
    readonly label: string;
    readonly whose: string | null;
  }): Promise<StreamSealer> {
    const { id, label, whose } = stream;
    // the key is held to the end of the stream, so that a lock loses nothing of what is being recorded
    const key = await this.ring.keyOf(whose);
    const row = async (sha256: string | null, pieces: number | null): Promise<StreamRow> => {
      const sealed = await encrypt(key, bytesOf({ label, sha256 }), this.stream({ id, whose, pieces }));
      return { id, whose, label: '', sha256: null, pieces, sealed };
    };
    return {
      opened: await row(null, null),
      piece: (index, bytes) => encrypt(key, pack(bytes), this.piece({ id, whose }, index)),
      closed: row,
    };
  }

  async openStream(row: StreamRow): Promise<StreamFacts | Unreadable> {
    const key = (await this.ring.keysOf([row.whose]))(row.whose);
    if (key === undefined) return 'key-missing';
    const content = row.sealed === undefined ? undefined : await this.json(key, row.sealed, this.stream(row));
    if (content === undefined) return 'altered';
    this.check();
    const { label, sha256 } = content as Pick<StreamFacts, 'label' | 'sha256'>;
    return { id: row.id, whose: row.whose, label, sha256 };
  }

  async openPieces(row: StreamRow, pieces: readonly PieceRow[]): Promise<readonly (Uint8Array | Unreadable)[]> {
    const key = (await this.ring.keysOf([row.whose]))(row.whose);
    const opened = await Promise.all(
      pieces.map(async ({ index, bytes }): Promise<Uint8Array | Unreadable> => {
        if (key === undefined) return 'key-missing';
        const packed = await decrypt(key, bytes, this.piece(row, index));
        return packed === undefined ? 'altered' : unpack(packed);
      }),
    );
    this.check();
    return opened;
  }

  async sealSetting(name: string, value: Json): Promise<Uint8Array> {
    return encrypt(await this.ring.keyOf(null), bytesOf(value), this.setting(name));
  }

  async openSetting(name: string, value: Json | Uint8Array): Promise<{ readonly value: Json } | Unreadable> {
    const key = (await this.ring.keysOf([null]))(null);
    if (key === undefined) return 'key-missing';
    const content = value instanceof Uint8Array ? await this.json(key, value, this.setting(name)) : undefined;
    this.check();
    return content === undefined ? 'altered' : { value: content };
  }

  private async sealOutlines(
    outlines: ReadonlyMap<string, Json>,
    made: string,
  ): Promise<ReadonlyMap<string, Uint8Array>> {
    const keyOf = await this.ring.keysOf(outlines.keys());
    const sealed = await Promise.all(
      [...outlines].map(async ([whose, outline]): Promise<[string, Uint8Array] | undefined> => {
        const key = keyOf(whose);
        return key && [whose, await encrypt(key, bytesOf(outline), this.outline(whose, made))];
      }),
    );
    return new Map(sealed.filter((one) => one !== undefined));
  }

  private async openOutlines(rows: readonly KeyRow[], made: string): Promise<ReadonlyMap<string, Json>> {
    const there = rows.filter(({ outline }) => outline !== undefined);
    const keyOf = await this.ring.keysFrom(there);
    const opened = await Promise.all(
      there.map(async ({ whose, outline }): Promise<[string, Json] | undefined> => {
        const key = keyOf(whose);
        const content = key && (await this.json(key, outline!, this.outline(whose, made)));
        return content === undefined ? undefined : [whose, content];
      }),
    );
    // locked meanwhile: nothing is given away
    this.check();
    return new Map(opened.filter((one) => one !== undefined));
  }

  async newBackupKey(backup: string): Promise<{ readonly key: CryptoKey; readonly keys: BackupKeys }> {
    return newBackupKey(this.ring.backups, await this.header(), backup);
  }

  openBackupKey(keys: BackupKeys, backup: string): Promise<CryptoKey | undefined> {
    if (keys.vault.store !== this.ring.store) return Promise.resolve(undefined);
    return openBackupKey(this.ring.backups, keys, backup);
  }

  private async json(key: CryptoKey, sealed: Uint8Array, belongsTo: Belonging): Promise<Json | undefined> {
    const packed = await decrypt(key, sealed, belongsTo);
    return packed === undefined ? undefined : jsonOf(packed);
  }

  private document({ id, kind, about, whose }: RowKeys): Belonging {
    return ['document', 1, this.ring.store, id, kind, about, whose];
  }

  private stream({ id, whose, pieces }: Pick<StreamRow, 'id' | 'whose' | 'pieces'>): Belonging {
    return ['stream', 1, this.ring.store, id, whose, pieces];
  }

  private piece({ id, whose }: Pick<StreamRow, 'id' | 'whose'>, index: number): Belonging {
    return ['piece', 1, this.ring.store, id, whose, index];
  }

  private outline(whose: string, made: string): Belonging {
    return ['outline', 1, this.ring.store, whose, made];
  }

  private setting(name: string): Belonging {
    return ['setting', 1, this.ring.store, name];
  }
}
