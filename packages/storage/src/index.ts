export type { Json, NewDocument, StoredDocument } from './document.ts';
export { StorageError, type StorageErrorCode } from './errors.ts';
export { IndexedDbStore } from './indexed-db-store.ts';
export { MemoryStore } from './memory-store.ts';
export type { ByteWriter, DocumentQuery, RecordStore, StoredBytes, StoreProblem } from './record-store.ts';
