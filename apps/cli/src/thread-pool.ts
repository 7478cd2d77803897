import { availableParallelism } from 'node:os';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { Piscina } from 'piscina';
import type { PoolSize } from './io.ts';
import type { Files } from './node-files.ts';
import { type Answer, type Pool, WorkerEnd } from './pool.ts';
import type { RunPlan } from './run-plan.ts';

/**
 * Memory for what is short-lived, which most of an assessment is [MB]. It fills before it is cleared, so that it is part of what a
 * run holds at its peak: four times as much saves no processor time.
 */
const YOUNG_MB = 8;

/**
 * How much of what lasts may come to what was left when it was last cleared before it is cleared again [%]. Without a word it may
 * become four times as much: a run of ten thousand recordings then holds far more than one of a hundred.
 */
const GROWTH_PERCENT = 50;

/**
 * V8 takes these while it runs, for all threads: a worker keeps one core busy, and nothing works beside it. What is short-lived is
 * cleared away by the thread that made it, and code is compiled by the thread that runs it: where workers fill the cores, threads
 * beside them take a twentieth of the processor each. Of V8 11, that of Node 20, code is wanted only after eight times its usual use,
 * since every worker has it compiled once more; later ones do not know that flag.
 */
const FLAGS = [
  `--heap-growing-percent=${GROWTH_PERCENT}`,
  '--no-parallel-scavenge',
  '--no-concurrent-array-buffer-sweeping',
  '--no-concurrent-recompilation',
  // a worker has all of its room from the start: it would not grow
  `--min-semi-space-size=${Math.ceil(YOUNG_MB / 3)}`,
  ...(process.versions.v8.startsWith('11.') ? ['--interrupt-budget=500000'] : []),
];

/**
 * Room for what is short-lived grows with what was alive when it was last cleared, or stays as it is. In the thread that gathers it
 * would become what a run over thousands of recordings fills for nothing. V8 lets it grow again whenever a thread starts.
 */
const [ROOM_GROWS, ROOM_STAYS] = ['--semi-space-growth-factor=2', '--semi-space-growth-factor=1'];

/**
 * An answer whose parts the pool has no hold of any more. What stands in a table of its tasks lives on with the tables that came before
 * it, until all that lasts is looked through.
 */
function takenFrom(answer: Answer): Answer {
  const taken = { ...answer };
  for (const part of Object.keys(answer)) Reflect.deleteProperty(answer, part);
  return taken;
}

/**
 * Looks once through all that lasts. Until that has been done V8 lets it become many times what was loaded; from then on it goes by
 * {@link GROWTH_PERCENT}. There is no other way to ask for it.
 */
function clearAway(): void {
  setFlagsFromString('--expose-gc');
  (runInNewContext('gc') as () => void)();
  setFlagsFromString('--no-expose-gc');
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
  setFlagsFromString(ROOM_GROWS);
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
  // no limit of a thread says the same
  for (const flag of FLAGS) setFlagsFromString(flag);
  clearAway();
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
        setFlagsFromString(ROOM_STAYS);
        return takenFrom(answer);
      } catch (error) {
        throw noStart ?? endOf(error);
      }
    },
    broken: () => noStart,
    close: () => pool.destroy(),
  };
}
