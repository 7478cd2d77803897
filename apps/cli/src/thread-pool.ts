import { availableParallelism } from 'node:os';
import { Piscina } from 'piscina';
import { keepRoom, letRoomGrow, makeReadyForWorkers, YOUNG_MB } from './engine.ts';
import type { PoolSize } from './io.ts';
import type { Files } from './node-files.ts';
import { type Answer, type Pool, WorkerEnd } from './pool.ts';
import type { RunPlan } from './run-plan.ts';

/**
 * An answer whose parts the pool has no hold of any more. What stands in a table of its tasks lives on with the tables that came before
 * it, until all that lasts is looked through.
 */
function takenFrom(answer: Answer): Answer {
  const taken = { ...answer };
  for (const part of Object.keys(answer)) Reflect.deleteProperty(answer, part);
  return taken;
}

/** Why a worker ended, in words. */
function endOf(error: unknown): WorkerEnd {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (code === 'ERR_WORKER_OUT_OF_MEMORY') {
    return new WorkerEnd('the memory of its worker was not enough: give each more with --memory-mb');
  }
  return new WorkerEnd(`its worker ended: ${error instanceof Error ? error.message : String(error)}`);
}

/** A single recording in this thread, which no other one needs: where it is large, a second core is free for it. */
async function ownThread(plan: RunPlan, files: Files): Promise<Pool> {
  letRoomGrow();
  const { assessor } = await import('./assessor.ts');
  const { readLargeFile } = await import('./large-file.ts');
  const readLarge = availableParallelism() > 1 ? { readLarge: readLargeFile } : {};
  return { workers: 1, run: assessor(plan, { ...files, ...readLarge }), close: () => Promise.resolve() };
}

/** Threads that assess recordings, as many as the machine has cores where nobody says another number. */
export async function startPool(plan: RunPlan, size: PoolSize, files: Files): Promise<Pool> {
  const { memoryMb, recordings } = size;
  if (recordings === 1 && memoryMb === undefined) return ownThread(plan, files);
  const workers = Math.min(size.workers ?? availableParallelism(), Math.max(recordings ?? Infinity, 1));
  makeReadyForWorkers();
  const pool = new Piscina<unknown, Answer>({
    filename: new URL('./assess-worker.js', import.meta.url).href,
    name: 'assessJob',
    workerData: plan,
    minThreads: workers,
    maxThreads: workers,
    idleTimeout: Infinity,
    resourceLimits: {
      maxYoungGenerationSizeMb: YOUNG_MB,
      ...(memoryMb === undefined ? {} : { maxOldGenerationSizeMb: memoryMb }),
    },
  });
  // a thread that ends without a recording cannot start, nor could the next one
  let noStart: WorkerEnd | undefined;
  pool.on('error', (error: unknown) => {
    noStart ??= endOf(error);
    void pool.destroy();
  });
  return {
    workers,
    run: async (job) => {
      if (noStart !== undefined) throw noStart;
      try {
        const answer = await pool.run(job);
        keepRoom();
        return takenFrom(answer);
      } catch (error) {
        throw noStart ?? endOf(error);
      }
    },
    broken: () => noStart,
    close: () => pool.destroy(),
  };
}
