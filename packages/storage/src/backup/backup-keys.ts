import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import { StorageError } from '../errors.ts';
import { decrypt, encrypt, importKey, random } from '../keys/envelope.ts';
import { headerFrom, keyFor, openRoot, type VaultHeader } from '../keys/root.ts';

/** How the key of a backup is kept in it: wrapped by the keys of the store, as they were opened when it was made. */
export interface BackupKeys {
  readonly vault: VaultHeader;
  readonly wrapped: string;
}

const belongsTo = (store: string, backup: string): readonly (string | number)[] => ['backup', 1, store, backup];

/** Purpose of the key that wraps those of backups. */
export const backupPurpose = 'backups';

/** A new key for one backup, and how it is kept. */
export async function newBackupKey(
  wrapping: CryptoKey,
  vault: VaultHeader,
  backup: string,
): Promise<{ readonly key: CryptoKey; readonly keys: BackupKeys }> {
  const raw = random(32);
  const [key, wrapped] = await Promise.all([
    importKey(raw.slice()),
    encrypt(wrapping, raw, belongsTo(vault.store, backup)),
  ]);
  raw.fill(0);
  return { key, keys: { vault, wrapped: bytesToHex(wrapped) } };
}

/** What a backup says of its keys, read from what lies there. */
export function backupKeysFrom(value: unknown): BackupKeys {
  const { vault, wrapped } = (value ?? {}) as Partial<BackupKeys>;
  if (typeof wrapped !== 'string' || !/^(?:[0-9a-f]{2})+$/.test(wrapped)) {
    throw new StorageError('damaged-backup', 'What this backup says of its keys was altered.');
  }
  return { vault: headerFrom((vault ?? null) as Parameters<typeof headerFrom>[0]), wrapped };
}

/** The key of a backup, by the key that wrapped it. */
export async function openBackupKey(
  wrapping: CryptoKey,
  { vault, wrapped }: BackupKeys,
  backup: string,
): Promise<CryptoKey> {
  const raw = await decrypt(wrapping, hexToBytes(wrapped), belongsTo(vault.store, backup));
  if (raw === undefined) throw new StorageError('damaged-backup', 'The key of this backup was altered.');
  return importKey(raw);
}

/** The key of a backup, by the passphrase or the recovery code of the store as they were when it was made. */
export async function backupKeyBySecret(keys: BackupKeys, backup: string, secret: string): Promise<CryptoKey> {
  const root = await openRoot(keys.vault, secret);
  const wrapping = await keyFor(backupPurpose, root, hexToBytes(keys.vault.store));
  root.fill(0);
  return openBackupKey(wrapping, keys, backup);
}
