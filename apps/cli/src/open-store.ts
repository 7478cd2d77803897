import type { RecordStore, StorageError } from '@surae/storage';

/**
 * The store in a folder, to be read and left as it is. One that is encrypted is opened by what `secret` gives.
 *
 * @throws {@link StorageError} as the store says
 */
export async function openStore(folder: string, secret: () => Promise<string>): Promise<RecordStore> {
  const { FileStore, fileVault } = await import('@surae/storage/node');
  try {
    return await FileStore.open(folder, { readOnly: true });
  } catch (error) {
    if ((error as Partial<StorageError>).code !== 'locked') throw error;
  }
  const vault = await fileVault(folder, { readOnly: true });
  try {
    return await vault.open(await secret());
  } catch (error) {
    vault.close();
    throw error;
  }
}
