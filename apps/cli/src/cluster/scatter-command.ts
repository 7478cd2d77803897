import { createHash } from 'node:crypto';
import type { WorkItem } from '@surae/study';
import { testOf } from '@surae/study/words';
import { refuseBadSettings } from '../assess-command.ts';
import { sha256 } from '../fingerprints.ts';
import { inOrder } from '../in-order.ts';
import type { Io } from '../io.ts';
import { runPlan } from '../plan-of-arguments.ts';
import type { PackedEntry } from '../pool.ts';
import { Progress } from '../progress.ts';
import { readyPlan, toldHashes } from '../ready-plan.ts';
import type { RunPlan } from '../run-plan.ts';
import { softwareName } from '../software.ts';
import { UsageError } from '../usage-error.ts';
import { workItems } from '../work-items.ts';
import type { Cluster } from './cluster.ts';
import { databaseAddress } from './database-address.ts';
import { rulesHash } from './rules-hash.ts';
import type { RunRecord } from './run-record.ts';
import type { RunItem, RunStore } from './run-store.ts';
import type { ScatterArguments } from './scatter-arguments.ts';

/** Files that are read at once. */
const READ_AT_ONCE = 8;
/** How long a database that is away is waited for [ms]. */
export const SHORT_PATIENCE_MS = 60_000;

/** Puts a list of recordings into a database, with a job for each whose result is not there yet. */
export async function scatterCommand(args: ScatterArguments, io: Io): Promise<number> {
  const address = databaseAddress(args.database, io.variable);
  const items = await workItems(args, io);
  const carried = [...new Set(items.flatMap((item) => Object.keys(item.carried)))];
  const plan: RunPlan = {
    ...(await runPlan({ ...args, output: { kind: 'json' }, lines: undefined }, carried, io)),
    want: { kind: 'json-and-rows' },
  };
  refuseBadSettings(readyPlan(plan));
  const cluster = await io.openCluster(address, { waitMs: SHORT_PATIENCE_MS, say: io.writeError });
  try {
    await cluster.prepare();
    const { found, refusals } = await foundItems(items, { args, plan, store: cluster.store }, io);
    const run: RunRecord = {
      name: args.run,
      software: softwareName(),
      rules: rulesHash(),
      list: sha256(JSON.stringify([args.sendsBytes, ...found.map(({ id }) => id)])),
      plan,
      tests: [...new Set(items.map(({ about }) => testOf(about)))],
      compares: items.some((item) => item.carried['person'] !== undefined),
      holdsBytes: args.sendsBytes,
      recordings: items.length,
    };
    await addRun(run, found, cluster);
    for (const [id, entry] of refusals) await cluster.store.addResult(id, entry);
    const missing = await cluster.store.missing(run.name);
    const queue = cluster.queue(run.name);
    await queue.forgetGivenUp();
    await queue.add(missing);
    const done = new Set(found.map(({ id }) => id)).size - missing.length - refusals.size;
    io.writeOut(
      `Run ${run.name} in the database ${cluster.words}: ${run.recordings} recordings, ${missing.length} to do, ${done} done before, ${refusals.size} refused.\n`,
    );
    return 0;
  } finally {
    await cluster.close();
  }
}

/** @throws {@link UsageError} where another run has its name */
async function addRun(run: RunRecord, items: readonly RunItem[], { store }: Cluster): Promise<void> {
  const there = await store.run(run.name);
  if (there === undefined) {
    await store.add(run, items);
    return;
  }
  if (there.list !== run.list || there.software !== run.software || there.rules !== run.rules) {
    throw new UsageError(
      `there is a run ${run.name} of other recordings, settings or another version: name another one with --run, or take that away with surae gather --run ${run.name} --remove`,
    );
  }
}

interface Reading {
  readonly args: ScatterArguments;
  readonly plan: RunPlan;
  readonly store: RunStore;
}

interface FoundItems {
  readonly found: readonly RunItem[];
  /** results of those that cannot be read here, and are refused without going anywhere */
  readonly refusals: ReadonlyMap<string, PackedEntry>;
}

/** The recordings with the hash of what their results hang on; each is read once, and its bytes go along where that was asked for. */
async function foundItems(items: readonly WorkItem[], { args, plan, store }: Reading, io: Io): Promise<FoundItems> {
  const told = toldHashes(plan);
  const rules = rulesHash();
  const progress = new Progress(io, items.length, false);
  const refusals = new Map<string, PackedEntry>();
  // what is refused here is refused in the words of a run on one machine
  let assess: ((item: WorkItem) => Promise<PackedEntry>) | undefined;
  const refusalOf = async (item: WorkItem): Promise<PackedEntry> => {
    assess ??= await refuser(plan, io);
    return assess(item);
  };
  const work = async (item: WorkItem): Promise<RunItem> => {
    const hash = item.refusal === undefined ? await readHash(item.path) : undefined;
    progress.add(false);
    const placed = { ...item, path: io.fullPath(item.path) };
    if (hash !== undefined) return { item: placed, id: sha256(`${rules} ${told(item)} ${hash}`), sha256: hash };
    const entry = await refusalOf(item);
    const id = sha256(`${rules} ${told(item)} - ${Buffer.from(entry.body).toString('base64')}`);
    refusals.set(id, entry);
    return { item: placed, id, sha256: null };
  };
  const readHash = async (path: string): Promise<string | undefined> => {
    try {
      if (!args.sendsBytes) return await hashOfChunks(path, io);
    } catch {
      return undefined;
    }
    const bytes = await io.readFile(path).catch(() => undefined);
    if (bytes === undefined) return undefined;
    const hash = sha256(bytes);
    await store.addBytes(hash, bytes);
    return hash;
  };
  const found: RunItem[] = [];
  for await (const one of inOrder(items, work, { atOnce: READ_AT_ONCE })) found.push(one);
  progress.end();
  return { found, refusals };
}

async function refuser(plan: RunPlan, io: Io): Promise<(item: WorkItem) => Promise<PackedEntry>> {
  const { assessor } = await import('../assessor.ts');
  const assess = assessor(plan, io);
  return async (item) => {
    const answer = await assess({ item, known: [] });
    if (answer.kind === 'new' && answer.entry.sha256 === null) return answer.entry;
    throw new UsageError(`${item.file} changed while the list was made: give the same command again`);
  };
}

async function hashOfChunks(path: string, io: Io): Promise<string> {
  const hash = createHash('sha256');
  for await (const chunk of io.readChunks(path)) hash.update(chunk);
  return hash.digest('hex');
}
