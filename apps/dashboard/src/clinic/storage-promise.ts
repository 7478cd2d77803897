/** What a browser says of the storage of a page. */
export type PromisedStorage = Partial<Pick<StorageManager, 'persisted' | 'persist'>>;

/**
 * Whether the browser has promised not to clear what is stored here by itself; null where it does not tell.
 *
 * Source: WHATWG, Storage Standard, "persistent" buckets
 */
export async function isPromised(storage: PromisedStorage | undefined): Promise<boolean | null> {
  try {
    return (await storage?.persisted?.()) ?? null;
  } catch {
    return null;
  }
}

/** Asks for that promise, which a browser may refuse without asking anybody; gives what it says then. */
export async function askToKeep(storage: PromisedStorage | undefined): Promise<boolean | null> {
  try {
    return (await storage?.persist?.()) ?? null;
  } catch {
    return null;
  }
}
