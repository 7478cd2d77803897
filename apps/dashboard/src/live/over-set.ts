import type { StoppedSet } from './live-set.ts';
import type { SetSession } from './set-session.ts';

/** A set that has just stopped. */
export interface OverSet {
  readonly session: SetSession;
  readonly stopped: StoppedSet;
  /** why samples were not written; null when all were */
  readonly unsaved: string | null;
  /** why the source ended of its own accord; null when it did not fail */
  readonly failure: string | null;
}
