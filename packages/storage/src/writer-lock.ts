import { type Access, writing } from './access.ts';

/** The part of the locks of a browser that is used. */
export type Locks = Pick<LockManager, 'request'>;

/** The locks of this browser; undefined where it has none. */
export function browserLocks(): Locks | undefined {
  return (globalThis.navigator as Partial<Navigator> | undefined)?.locks;
}

/**
 * Lets one window at a time write into what has a name (Web Locks). One that comes later reads, is told so by its access, and
 * writes once the other is closed. Gives what lets go.
 */
export async function writeInTurn(name: string, access: Access, locks: Locks): Promise<() => void> {
  let letGo: () => void = () => {};
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  const isFirst = await new Promise<boolean>((resolve, reject) => {
    const request = locks.request(name, { ifAvailable: true }, (lock) => {
      resolve(lock !== null);
      return lock === null ? undefined : held;
    });
    request.catch(reject);
  });
  if (isFirst) return letGo;
  access.become({ writes: false, why: 'written-elsewhere' });
  const waiting = new AbortController();
  locks
    .request(name, { signal: waiting.signal }, () => {
      access.become(writing);
      return held;
    })
    // nobody waits any more
    .catch(() => undefined);
  return () => {
    waiting.abort();
    letGo();
  };
}
