import type { WorkItem } from '@surae/study';

/** An entry as it is sent and kept: its bytes, made small. Text of that length would outlive its use in the thread that gathers. */
export interface PackedEntry {
  readonly sha256: string | null;
  readonly body: Uint8Array;
}

/** One recording to assess, and the hashes of bytes whose result is there already. */
export interface Job {
  readonly item: WorkItem;
  readonly known: readonly string[];
  /** the bytes that have to be assessed and no others; undefined: whatever lies at the path */
  readonly expected?: ExpectedBytes;
}

/** The bytes of a recording that was read before, by another process or machine. */
export interface ExpectedBytes {
  readonly sha256: string;
  /** the bytes themselves, where they need not be read */
  readonly bytes: Uint8Array | undefined;
}

/** What came of it: an entry, the hash under which one is there already, or why the expected bytes could not be read. */
export type Answer =
  | { readonly kind: 'new'; readonly entry: PackedEntry }
  | { readonly kind: 'known'; readonly sha256: string }
  | { readonly kind: 'not-expected'; readonly reason: string };

/** What assesses recordings, several at once. */
export interface Pool {
  /** how many are assessed at once */
  readonly workers: number;
  /** @throws {@link WorkerEnd} where the worker ended before it had an answer */
  readonly run: (job: Job) => Promise<Answer>;
  /** why no worker can be started, nor could the next one; undefined while they can */
  readonly broken?: () => WorkerEnd | undefined;
  /** ends what runs; what has no answer then is rejected */
  readonly close: () => Promise<void>;
}

/** A worker ended, and why in words: its recording is refused, the others are not touched. */
export class WorkerEnd extends Error {
  override readonly name = 'WorkerEnd';
}
