import type { Io } from '../io.ts';
import type { Cluster } from './cluster.ts';
import type { RunRecord } from './run-record.ts';

/** Recordings that were given up and are listed in words. */
const LISTED = 20;

/** How far a run is. */
export interface RunLeft {
  readonly run: string;
  readonly software: string;
  readonly recordings: number;
  /** different results that are there or refused; the same bytes with the same words said about them are one result */
  readonly results: number;
  readonly done: number;
  readonly inHand: number;
  readonly toDo: number;
  readonly givenUp: readonly { readonly file: string; readonly reason: string }[];
  readonly workers: number;
}

/** Says how far a run is. @returns 0 when nothing is left to do, else 1 */
export async function leftCommand(run: RunRecord, json: boolean, cluster: Cluster, io: Io): Promise<number> {
  const left = await leftOf(run, cluster);
  io.writeOut(json ? `${JSON.stringify(left)}\n` : `${leftLines(left).join('\n')}\n`);
  return left.inHand + left.toDo === 0 ? 0 : 1;
}

async function leftOf(run: RunRecord, { store, queue: queueOf }: Cluster): Promise<RunLeft> {
  const queue = queueOf(run.name);
  const [{ inHand }, reasons, missing, results, workers] = await Promise.all([
    queue.counts(),
    queue.givenUp(),
    store.missing(run.name),
    store.results(run.name),
    queue.workers(),
  ]);
  const givenUp = missing.filter((id) => reasons.has(id));
  const files = await store.files(run.name, givenUp);
  // a job may end between two of the questions: nothing is ever less than none
  const held = Math.min(inHand, missing.length - givenUp.length);
  return {
    run: run.name,
    software: run.software,
    recordings: run.recordings,
    results,
    done: results - missing.length,
    inHand: held,
    toDo: missing.length - givenUp.length - held,
    givenUp: givenUp.map((id) => ({ file: files.get(id) ?? id, reason: reasons.get(id)! })),
    workers,
  };
}

/** How far a run is, in words. */
export function leftLines(left: RunLeft): string[] {
  const { run, software, recordings, results, done, inHand, toDo, givenUp, workers } = left;
  const twice = recordings - results;
  const counts: [string, number][] = [
    ['done', done],
    ['in hand', inHand],
    ['to do', toDo],
    ['given up', givenUp.length],
    ['workers', workers],
  ];
  const width = Math.max(...counts.map(([, count]) => String(count).length));
  return [
    `Run ${run} of ${software}: ${recordings} recordings${twice > 0 ? `, ${twice} of them named twice` : ''}`,
    ...counts.map(([name, count]) => `  ${name.padEnd(10)}${String(count).padStart(width)}`),
    ...givenUp.slice(0, LISTED).map(({ file, reason }) => `  ${file}: ${reason}`),
    ...(givenUp.length > LISTED ? [`  and ${givenUp.length - LISTED} more; --json has them all`] : []),
    ...(inHand + toDo > 0 && workers === 0 ? ['  No worker is at it: start some with surae work'] : []),
    ...(givenUp.length > 0 ? ['  The same surae scatter tries again what was given up.'] : []),
  ];
}
