import { Access } from './access.ts';
import { openDatabase } from './database.ts';
import { StorageError } from './errors.ts';
import { IndexedDbRows } from './indexed-db-rows.ts';
import { KeptRecords, type RecordsOptions } from './kept-records.ts';
import { headerName, Vault, type VaultOptions } from './keys/vault.ts';
import { plainCodec } from './plain-codec.ts';
import { browserLocks, type Locks, writeInTurn } from './writer-lock.ts';

/** How a place in the browser is shared. */
export interface BrowserPlace {
  /** only reads */
  readonly readOnly?: boolean;
  /** one window at a time writes, the others read and are told; every window writes when left out */
  readonly oneWriter?: boolean;
  /** locks in place of those of the browser */
  readonly locks?: Locks;
}

/** Rows of the database of a name; rejects with a {@link StorageError}. */
async function browserRows(
  name: string,
  { readOnly, oneWriter, locks = browserLocks() }: BrowserPlace,
): Promise<IndexedDbRows> {
  const access = new Access(readOnly === true ? { writes: false, why: 'asked' } : undefined);
  const isShared = readOnly !== true && oneWriter === true && locks !== undefined;
  const letGo = isShared ? await writeInTurn(`surae store ${name}`, access, locks) : undefined;
  try {
    return new IndexedDbRows(await openDatabase(name), access, letGo);
  } catch (error) {
    letGo?.();
    throw error;
  }
}

/** The store of the browser, as it lies open. */
export class IndexedDbStore extends KeptRecords {
  /** Opens the store of a name; rejects with a {@link StorageError}, with `locked` where it is encrypted. */
  static async open(name: string, options: BrowserPlace & RecordsOptions = {}): Promise<IndexedDbStore> {
    const rows = await browserRows(name, options);
    if ((await rows.setting(headerName)) !== undefined) {
      rows.close();
      throw new StorageError('locked', 'This store is encrypted: it is opened by its passphrase.');
    }
    return new IndexedDbStore(rows, plainCodec, options);
  }
}

/** The encrypted store of a name, locked; rejects with a {@link StorageError}. */
export async function browserVault(name: string, options: BrowserPlace & VaultOptions = {}): Promise<Vault> {
  return new Vault(await browserRows(name, options), options);
}
