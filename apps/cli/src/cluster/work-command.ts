import type { Io } from '../io.ts';
import { WorkerEnd } from '../pool.ts';
import { UsageError } from '../usage-error.ts';
import type { Cluster } from './cluster.ts';
import { databaseAddress } from './database-address.ts';
import { mismatchOf, namedRun } from './run-match.ts';
import type { RunRecord } from './run-record.ts';
import type { WorkArguments } from './work-arguments.ts';
import { type WorkDone, workOn } from './work-on.ts';

/**
 * One worker of any number: makes what is left of the runs in a database and ends when nothing is.
 *
 * @returns 0 when nothing is left, 1 when recordings were given up, 2 when a run is of another version, 128 and the number of the
 *   signal when it was stopped
 */
export async function workCommand(args: WorkArguments, io: Io): Promise<number> {
  const address = databaseAddress(args.database, io.variable);
  const stop = new AbortController();
  let signal = 0;
  const unwatch = io.onStop((number) => {
    signal = number;
    io.writeError('Asked to stop: what is in hand is finished first; asked once more, it ends at once.\n');
    stop.abort();
  });
  try {
    const cluster = await io.openCluster(address, { waitMs: Infinity, say: io.writeError, stop: stop.signal });
    try {
      let code = 0;
      let isIdle = true;
      for (const run of await asked(args, cluster)) {
        const mismatch = mismatchOf(run);
        if (mismatch !== undefined) {
          io.writeError(`Refused: ${mismatch}.\n`);
          code = 2;
          continue;
        }
        const done = await worked(run, args, cluster, stop.signal, io);
        if (done === undefined) continue;
        isIdle = false;
        if (stop.signal.aborted) return 128 + signal;
        if (done.givenUp > 0) code = Math.max(code, 1);
      }
      if (isIdle && code === 0) io.writeError(`Nothing is left to do in the database ${cluster.words}.\n`);
      return code;
    } finally {
      await cluster.close();
    }
  } finally {
    unwatch();
  }
}

async function asked({ run }: WorkArguments, cluster: Cluster): Promise<readonly RunRecord[]> {
  if (run !== undefined) return [await namedRun(cluster, run)];
  await cluster.store.check();
  return cluster.store.runs();
}

/** What came of a run; undefined where nothing was left of it. */
async function worked(
  run: RunRecord,
  args: WorkArguments,
  cluster: Cluster,
  stop: AbortSignal,
  io: Io,
): Promise<WorkDone | undefined> {
  const givenUp = await cluster.queue(run.name).givenUp();
  const left = (await cluster.store.missing(run.name)).filter((id) => !givenUp.has(id)).length;
  if (left === 0) return undefined;
  const pool = await io.startPool(run.plan, { ...args, recordings: undefined });
  try {
    io.writeError(
      `Run ${run.name}: ${left} of ${run.recordings} recordings to do, ${pool.workers} at once in this worker.\n`,
    );
    const { moved, patienceS } = args;
    const done = await workOn(run, { cluster, pool, moved, patienceMs: 1000 * patienceS, stop });
    const all = done.isWhole ? 'nothing is left' : 'stopped, and the others go on';
    const lost = done.givenUp > 0 ? `, ${done.givenUp} given up: surae gather --left tells why` : '';
    io.writeError(`Run ${run.name}: ${done.made} made by this worker, ${all}${lost}.\n`);
    return done;
  } catch (error) {
    if (error instanceof WorkerEnd) throw new UsageError(`this worker cannot work: ${error.message}`);
    throw error;
  } finally {
    await pool.close();
  }
}
