import { StorageError } from '../errors.ts';
import { KeptRecords, type RecordsOptions } from '../kept-records.ts';
import { headerName, Vault, type VaultOptions } from '../keys/vault.ts';
import { plainCodec } from '../plain-codec.ts';
import { FileRows } from './file-rows.ts';

export interface FilePlace {
  /** only reads, and makes no folder */
  readonly readOnly?: boolean;
}

/** A store in a folder of files, as it lies open. */
export class FileStore extends KeptRecords {
  /** Opens the store in a folder; rejects with a {@link StorageError}, with `locked` where it is encrypted. */
  static async open(folder: string, options: FilePlace & RecordsOptions = {}): Promise<FileStore> {
    const rows = await FileRows.open(folder, options.readOnly === true);
    if ((await rows.setting(headerName)) !== undefined) {
      rows.close();
      throw new StorageError('locked', 'This store is encrypted: it is opened by its passphrase.');
    }
    return new FileStore(rows, plainCodec, options);
  }
}

/** The encrypted store in a folder, locked; rejects with a {@link StorageError}. */
export async function fileVault(folder: string, options: FilePlace & VaultOptions = {}): Promise<Vault> {
  return new Vault(await FileRows.open(folder, options.readOnly === true), options);
}
