import { setTimeout } from 'node:timers/promises';
import type { Pool } from '../pool.ts';
import type { Cluster } from './cluster.ts';
import type { RunRecord } from './run-record.ts';
import { type MovedFolder, movedPath } from './work-arguments.ts';

/** Between two looks at whether anything is left [ms]. */
const LOOK_MS = 500;

/** Recordings in hand for each that is assessed: the others are asked for and written down meanwhile, which waits for a disk. */
const IN_HAND = 4;

/** How a worker works. */
export interface Working {
  readonly cluster: Cluster;
  readonly pool: Pool;
  readonly moved: readonly MovedFolder[];
  readonly patienceMs: number;
  /** asks it to stop: what is in hand is finished */
  readonly stop: AbortSignal;
}

/** What a worker did. */
export interface WorkDone {
  /** results that it made */
  readonly made: number;
  /** recordings of the run that were given up, by whomever */
  readonly givenUp: number;
  /** results of the run that are there or given up */
  readonly isWhole: boolean;
}

/** Makes results of a run until nothing is left, by it or by the others, or it is asked to stop. */
export async function workOn(run: RunRecord, working: Working): Promise<WorkDone> {
  const { cluster, pool, moved, patienceMs, stop } = working;
  const { store } = cluster;
  const queue = cluster.queue(run.name);
  let made = 0;
  const ended = new AbortController();
  let fault: unknown;
  const make = async (id: string): Promise<void> => {
    const found = await store.item(run.name, id);
    // a job that was handed over twice, or whose run was taken away
    if (found === undefined || found.isDone || found.sha256 === null) return;
    const { item, sha256 } = found;
    const bytes = run.holdsBytes ? await store.bytes(sha256) : undefined;
    const answer = await pool
      .run({ item: { ...item, path: movedPath(item.path, moved) }, known: [], expected: { sha256, bytes } })
      .catch((error: unknown) => {
        fault = pool.broken?.();
        if (fault !== undefined) ended.abort();
        throw error;
      });
    if (answer.kind === 'not-expected') throw new Error(answer.reason);
    if (answer.kind === 'new' && (await store.addResult(id, answer.entry))) made += 1;
  };
  const worker = queue.work(make, pool.workers * IN_HAND, patienceMs);
  let isWhole = false;
  try {
    const stopped = AbortSignal.any([stop, ended.signal]);
    while (!isWhole && !stopped.aborted) {
      await setTimeout(LOOK_MS, undefined, { signal: stopped }).catch(() => undefined);
      if (stopped.aborted) break;
      const { waiting, inHand } = await queue.counts();
      if (waiting + inHand > 0) continue;
      const givenUp = await queue.givenUp();
      const missing = (await store.missing(run.name)).filter((id) => !givenUp.has(id));
      isWhole = missing.length === 0;
      // a list that was cut off before all its jobs were there
      await queue.add(missing);
    }
  } finally {
    await worker.close();
  }
  if (fault !== undefined) throw fault as Error;
  return { made, isWhole, givenUp: isWhole ? (await queue.givenUp()).size : 0 };
}
