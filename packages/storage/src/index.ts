export type {
  BackupCount,
  BackupProblem,
  BackupReport,
  BackupSource,
  RefusedItem,
  RestoreReport,
} from './backup/backup-report.ts';
export { DamagedBackupError } from './backup/restore-backup.ts';
export type { Json, NewDocument, OwnedDocument, StoredDocument } from './document.ts';
export { StorageError, type StorageErrorCode } from './errors.ts';
export { freshLog } from './fresh-log.ts';
export { type BrowserPlace, browserVault, IndexedDbStore } from './indexed-db-store.ts';
export type { RecordsOptions } from './kept-records.ts';
export { leastPassphraseLength, type PassphraseCost, passphraseCost } from './keys/passphrase.ts';
export { type ReadCode, readRecoveryCode } from './keys/recovery-code.ts';
export { Vault, type VaultOptions, type VaultState } from './keys/vault.ts';
export { MemoryStore } from './memory-store.ts';
export { memoryVault } from './memory-vault.ts';
export type {
  Adoption,
  AskedBy,
  BackupNote,
  ByteWriter,
  Changes,
  ClockSetBack,
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
  StreamFacts,
} from './record-store.ts';
