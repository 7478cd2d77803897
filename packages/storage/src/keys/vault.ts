import { StorageError } from '../errors.ts';
import { KeptRecords, type RecordsOptions } from '../kept-records.ts';
import type { RecordStore, StoreAccess } from '../record-store.ts';
import type { Rows } from '../rows.ts';
import { newId } from '../seal.ts';
import { type Bytes, random } from './envelope.ts';
import { KeyRing } from './key-ring.ts';
import { checkPassphrase, type PassphraseCost, passphraseCost } from './passphrase.ts';
import { printRecoveryCode, recoveryLength } from './recovery-code.ts';
import { headerFrom, newRoot, openRoot, type VaultHeader, wrapByCode, wrapByPassphrase } from './root.ts';
import { SealedCodec } from './sealed-codec.ts';

export interface VaultOptions extends RecordsOptions {
  /** what guessing a passphrase costs; 64 MiB and three passes when left out, and less only where a test is in a hurry */
  readonly cost?: PassphraseCost;
}

/** What a vault is: nothing yet, a store that lies open, encrypted and locked, or encrypted and open. */
export type VaultState = 'empty' | 'plain' | 'locked' | 'open';

/** The name under which a store keeps what it says about its keys. */
export const headerName = 'vault';

/** A store that is encrypted: opened by a passphrase or by the printed recovery code, and locked again. */
export class Vault {
  private readonly rows: Rows;
  private readonly options: VaultOptions;
  private ring: KeyRing | null = null;
  private present: RecordStore | null = null;

  constructor(rows: Rows, options: VaultOptions = {}) {
    this.rows = rows;
    this.options = options;
  }

  /** The store while it is open; null while it is locked. */
  get store(): RecordStore | null {
    return this.present;
  }

  get access(): StoreAccess {
    return this.rows.access.now;
  }

  onAccess(listener: (access: StoreAccess) => void): () => void {
    return this.rows.access.listen(listener);
  }

  async state(): Promise<VaultState> {
    if (this.present !== null) return 'open';
    if ((await this.rows.setting(headerName)) !== undefined) return 'locked';
    const [documents, streams] = await Promise.all([this.rows.documentsAfter(0, 1), this.rows.streams()]);
    return documents.length === 0 && streams.length === 0 ? 'empty' : 'plain';
  }

  /**
   * Makes an encrypted store in an empty place and opens it. The recovery code is given this once and kept nowhere: whoever has
   * neither it nor the passphrase has lost everything. Rejects with `short-passphrase`, or `not-empty`.
   */
  async create(passphrase: string): Promise<{ readonly recoveryCode: string; readonly store: RecordStore }> {
    checkPassphrase(passphrase);
    this.rows.access.check();
    if ((await this.state()) !== 'empty')
      throw new StorageError('not-empty', 'There is a store in this place already.');
    const store = newId();
    const root = newRoot();
    const code = random(recoveryLength);
    const header: VaultHeader = {
      version: 1,
      store,
      passphrase: await wrapByPassphrase(root, store, passphrase, this.cost()),
      recovery: await wrapByCode(root, store, code),
    };
    await this.keep(header);
    const recoveryCode = printRecoveryCode(code);
    return { recoveryCode, store: await this.openWith(root, store) };
  }

  /** Opens it by the passphrase or the recovery code; rejects with `wrong-passphrase`, `mistyped-code` or `no-store`. */
  async open(secret: string): Promise<RecordStore> {
    const header = await this.header();
    return this.openWith(await openRoot(header, secret), header.store);
  }

  /** Forgets every key: the store that was open refuses everything, but a recording that runs is written to its end. */
  lock(): void {
    this.ring?.lock();
    this.ring = null;
    this.present = null;
  }

  /** Another passphrase from now on, by the present one or the recovery code. Nothing that is kept is written anew. */
  async changePassphrase(present: string, next: string): Promise<void> {
    checkPassphrase(next);
    this.rows.access.check();
    const header = await this.header();
    const root = await openRoot(header, present);
    await this.keep({ ...header, passphrase: await wrapByPassphrase(root, header.store, next, this.cost()) });
    root.fill(0);
  }

  /** Another recovery code in place of the earlier one, which opens nothing any more. */
  async newRecoveryCode(present: string): Promise<string> {
    this.rows.access.check();
    const header = await this.header();
    const root = await openRoot(header, present);
    const code = random(recoveryLength);
    await this.keep({ ...header, recovery: await wrapByCode(root, header.store, code) });
    root.fill(0);
    return printRecoveryCode(code);
  }

  /** Locks it and lets go of the place. */
  close(): void {
    this.lock();
    this.rows.close();
  }

  private cost(): PassphraseCost {
    return this.options.cost ?? passphraseCost;
  }

  private async header(): Promise<VaultHeader> {
    const value = await this.rows.setting(headerName);
    if (value === undefined) throw new StorageError('no-store', 'There is no encrypted store in this place.');
    return headerFrom(value);
  }

  private keep(header: VaultHeader): Promise<void> {
    return this.rows.keepSetting(headerName, JSON.parse(JSON.stringify(header)) as Parameters<Rows['keepSetting']>[1]);
  }

  private async openWith(root: Bytes, store: string): Promise<RecordStore> {
    this.lock();
    this.ring = await KeyRing.from(root, store, this.rows);
    root.fill(0);
    this.present = new KeptRecords(this.rows, new SealedCodec(this.ring, () => this.header()), this.options);
    return this.present;
  }
}
