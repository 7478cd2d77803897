import { StorageError } from './errors.ts';
import type { StoreAccess } from './record-store.ts';

export const writing: StoreAccess = { writes: true, why: null };

/** Whether a store takes anything, and who is told when that changes. */
export class Access {
  private present: StoreAccess;
  private readonly listeners = new Set<(access: StoreAccess) => void>();

  constructor(present: StoreAccess = writing) {
    this.present = present;
  }

  get now(): StoreAccess {
    return this.present;
  }

  become(access: StoreAccess): void {
    this.present = access;
    for (const listener of [...this.listeners]) listener(access);
  }

  listen(listener: (access: StoreAccess) => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** Throws where nothing may be written. */
  check(): void {
    const { why } = this.present;
    if (why === 'asked') throw new StorageError('read-only', 'This store was opened for reading.');
    if (why === 'written-elsewhere') {
      throw new StorageError('written-elsewhere', 'Another window or program writes into this store.');
    }
  }
}
