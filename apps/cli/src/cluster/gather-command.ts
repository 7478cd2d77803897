import { refused } from '@surae/study';
import { reliabilityOf } from '../assess-command.ts';
import { entryOf, packedEntry } from '../entry.ts';
import { Gathered } from '../gathered.ts';
import type { Io } from '../io.ts';
import { Journal } from '../journal.ts';
import type { PackedEntry } from '../pool.ts';
import { readyPlan } from '../ready-plan.ts';
import { runOutput } from '../run-output.ts';
import { refusedLines } from '../run-words.ts';
import { UsageError } from '../usage-error.ts';
import type { Cluster } from './cluster.ts';
import { databaseAddress } from './database-address.ts';
import type { GatherAct, GatherArguments } from './gather-arguments.ts';
import { leftCommand } from './left.ts';
import { mismatchOf, namedRun } from './run-match.ts';
import type { RunRecord } from './run-record.ts';
import type { PlacedItem } from './run-store.ts';
import { SHORT_PATIENCE_MS } from './scatter-command.ts';

/** Writes what a run came to, as a run on one machine writes it; or says what is left of it, or takes it away. */
export async function gatherCommand(args: GatherArguments, io: Io): Promise<number> {
  const address = databaseAddress(args.database, io.variable);
  const cluster = await io.openCluster(address, { waitMs: SHORT_PATIENCE_MS, say: io.writeError });
  try {
    const run = await namedRun(cluster, args.run);
    switch (args.act.kind) {
      case 'left':
        return await leftCommand(run, args.act.json, cluster, io);
      case 'remove':
        await cluster.queue(run.name).remove();
        await cluster.store.remove(run.name);
        io.writeOut(`Run ${run.name} is no longer in the database ${cluster.words}.\n`);
        return 0;
      case 'write':
        return await write(run, args, args.act, cluster, io);
    }
  } finally {
    await cluster.close();
  }
}

async function write(
  run: RunRecord,
  args: GatherArguments,
  { output: form }: Extract<GatherAct, { kind: 'write' }>,
  cluster: Cluster,
  io: Io,
): Promise<number> {
  const mismatch = mismatchOf(run);
  if (mismatch !== undefined) throw new UsageError(mismatch);
  const { name, plan, tests, compares, recordings } = run;
  const given = await reliabilityOf(args, io);
  const ready = readyPlan(plan);
  const givenUp = await cluster.queue(name).givenUp();
  const left = (await cluster.store.missing(name)).filter((id) => !givenUp.has(id)).length;
  if (left > 0) {
    throw new UsageError(
      `the run ${name} is not whole: ${left} of ${recordings} recordings are still to do; surae gather --left says more`,
    );
  }
  const entry = ({ item, id, entry: there }: PlacedItem): PackedEntry => {
    if (there !== undefined) return there;
    const reason = givenUp.get(id) ?? 'its result was taken away while it was gathered';
    return packedEntry(entryOf(refused(item, `${item.file}: ${reason}`, null), ready));
  };
  const output = runOutput(form, { carried: plan.carried, tests: new Set(tests), compares }, io);
  const journal = new Journal(io.openLog(undefined), '');
  let isWhole = false;
  try {
    const gathered = new Gathered(output, journal, io.width);
    for (let from = 0; from < recordings; ) {
      const page = await cluster.store.page(name, from);
      if (page.length === 0) throw new UsageError(`the run ${name} was taken away while it was gathered`);
      for (const one of page) gathered.add(one.item, journal.add(one.id, entry(one)));
      from = page.at(-1)!.place + 1;
    }
    gathered.compare(given, ready.settings.settings.judging);
    output.close(given.note);
    isWhole = true;
    io.writeError(refusedLines(gathered.refusals, recordings, form));
    return gathered.refusals.length === 0 ? 0 : 1;
  } finally {
    if (!isWhole) output.abandon();
    journal.close();
  }
}
