import type { RecordStore } from '@surae/storage';
import { afterEach, vi } from 'vitest';

/** Takes back after each test what was watched in it, and lets go of the stores that were held; gives what holds one. */
export function heldStores(): <Store extends RecordStore>(store: Store) => Store {
  const opened: RecordStore[] = [];
  afterEach(() => {
    vi.restoreAllMocks();
    for (const store of opened.splice(0)) store.close();
  });
  return (store) => {
    opened.push(store);
    return store;
  };
}
