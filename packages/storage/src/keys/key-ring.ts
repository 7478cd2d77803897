import { hexToBytes } from '@noble/hashes/utils.js';
import { StorageError } from '../errors.ts';
import type { KeyRow, Rows } from '../rows.ts';
import { type Belonging, type Bytes, decrypt, encrypt, importKey, random } from './envelope.ts';
import { keyFor } from './root.ts';

/** Under this name the key of what is nobody's is kept. */
const nobody = '';

const nameOf = (whose: string | null): string => whose ?? nobody;

/** The keys of an open store: one a person, made when the first thing of them is kept. */
export class KeyRing {
  readonly store: string;
  private readonly rows: Rows;
  private keys: { readonly wrapping: CryptoKey; readonly backups: CryptoKey } | null;
  private readonly known = new Map<string, CryptoKey>();

  private constructor(store: string, rows: Rows, wrapping: CryptoKey, backups: CryptoKey) {
    this.store = store;
    this.rows = rows;
    this.keys = { wrapping, backups };
  }

  /** The ring of a store; the root is not kept. */
  static async from(root: Bytes, store: string, rows: Rows): Promise<KeyRing> {
    const salt = hexToBytes(store) as Bytes;
    const [wrapping, backups] = await Promise.all([
      keyFor('keys of persons', root, salt),
      keyFor('backups', root, salt),
    ]);
    return new KeyRing(store, rows, wrapping, backups);
  }

  /** Forgets every key. */
  lock(): void {
    this.keys = null;
    this.known.clear();
  }

  /** Throws `locked`. */
  check(): void {
    this.open();
  }

  /** The key that wraps those of backups. */
  get backups(): CryptoKey {
    return this.open().backups;
  }

  forget(whose: string): void {
    this.known.delete(whose);
  }

  /** The key of a person for writing; it is made where there is none. */
  async keyOf(whose: string | null): Promise<CryptoKey> {
    const name = nameOf(whose);
    const found = await this.find(name);
    if (found !== undefined) return found;
    const raw = random(32);
    const wrapped = await encrypt(this.open().wrapping, raw, this.belongsTo(name));
    raw.fill(0);
    const row = await this.rows.addKey({ whose: name, wrapped, erased: false });
    if (row.wrapped === null) throw new StorageError('erased', 'This person was erased: nothing is kept of them.');
    return (await this.unwrap(name, row.wrapped)) ?? this.lost(name);
  }

  /** The keys of some people for reading, by their ids; those that are not there or were altered are left out. */
  async keysOf(all: Iterable<string | null>): Promise<(whose: string | null) => CryptoKey | undefined> {
    this.check();
    const missing = [...new Set(all)].map(nameOf).filter((name) => !this.known.has(name));
    return this.keysFrom(missing.length > 0 ? await this.rows.keys(missing) : []);
  }

  /** The same from rows that were read already; those of them that are known are not unwrapped again. */
  async keysFrom(rows: readonly KeyRow[]): Promise<(whose: string | null) => CryptoKey | undefined> {
    this.check();
    const there = rows.filter(({ whose, wrapped }) => wrapped !== null && !this.known.has(whose));
    await Promise.all(there.map(({ whose, wrapped }) => this.unwrap(whose, wrapped!)));
    return (whose) => this.known.get(nameOf(whose));
  }

  private async find(name: string): Promise<CryptoKey | undefined> {
    this.check();
    const known = this.known.get(name);
    if (known !== undefined) return known;
    const [row] = await this.rows.keys([name]);
    if (row === undefined) return undefined;
    if (row.wrapped === null) throw new StorageError('erased', 'This person was erased: nothing is kept of them.');
    return (await this.unwrap(name, row.wrapped)) ?? this.lost(name);
  }

  private async unwrap(name: string, wrapped: Uint8Array): Promise<CryptoKey | undefined> {
    const raw = await decrypt(this.open().wrapping, wrapped, this.belongsTo(name));
    if (raw === undefined) return undefined;
    const key = await importKey(raw);
    raw.fill(0);
    // locked while this was on its way: nothing stays behind
    this.check();
    this.known.set(name, key);
    return key;
  }

  private lost(name: string): never {
    throw new StorageError('altered', `The key of "${name}" was altered: nothing can be added under it.`);
  }

  private belongsTo(name: string): Belonging {
    return ['key', 1, this.store, name];
  }

  private open(): { readonly wrapping: CryptoKey; readonly backups: CryptoKey } {
    if (this.keys === null) throw new StorageError('locked', 'This store is locked: open it with the passphrase.');
    return this.keys;
  }
}
