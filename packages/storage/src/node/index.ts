export { type FilePlace, FileStore, fileVault } from './file-store.ts';
