import { HOP_PROTOCOLS, PROTOCOLS, PULL_PROTOCOLS } from '@surae/shared';
import { testOf } from '@surae/study/words';
import type { AssessArguments } from './assess-arguments.ts';
import { Gathered } from './gathered.ts';
import type { Io } from './io.ts';
import { Journal } from './journal.ts';
import { type GivenReliability, readOwnReliability } from './own-reliability.ts';
import { runPlan } from './plan-of-arguments.ts';
import { Progress } from './progress.ts';
import { readNamed } from './read-named.ts';
import { type ReadyPlan, readyPlan, toldHashes } from './ready-plan.ts';
import { runItems } from './run-items.ts';
import { runOutput } from './run-output.ts';
import { fromJournalLine, refusedLines, stoppedLine } from './run-words.ts';
import { workItems } from './work-items.ts';

/** Assesses all recordings of a list, several at once; results lie in the journal, and one at a time is in memory. */
export async function assessCommand(args: AssessArguments, io: Io): Promise<number> {
  const given = await reliabilityOf(args, io);
  const items = await workItems(args, io);
  const carried = [...new Set(items.flatMap((item) => Object.keys(item.carried)))];
  const plan = await runPlan(args, carried, io);
  const ready = readyPlan(plan);
  refuseBadSettings(ready);
  const tests = new Set(items.map(({ about }) => testOf(about)));
  const compares = items.some((item) => item.carried['person'] !== undefined);
  const output = runOutput(args.output, { carried, tests, compares }, io);
  const journal = new Journal(io.openLog(args.journal), args.journal ?? '');
  const before = { results: journal.size, damaged: journal.damaged };
  const pool = await io.startPool(plan, { ...args, recordings: items.length });
  const progress = new Progress(io, items.length, args.output.kind !== 'tables');
  const stop = new AbortController();
  let signal = 0;
  const unwatch = io.onStop((number) => {
    signal = number;
    stop.abort();
    void pool.close();
  });
  const found = { done: 0, wereThere: 0 };
  const finished = ({ wasThere }: { readonly wasThere: boolean }): void => {
    found.done += 1;
    if (wasThere) found.wereThere += 1;
    progress.add(wasThere);
  };
  let isWhole = false;
  try {
    const run = {
      plan: { want: plan.want, carried },
      pool,
      journal,
      told: toldHashes(plan),
      stop: stop.signal,
      finished,
    };
    const gathered = new Gathered(output, journal, io.width);
    for await (const { item, place } of runItems(items, run)) gathered.add(item, place);
    progress.end();
    if (stop.signal.aborted) {
      io.writeError(stoppedLine(found.done, items.length, args.journal));
      return 128 + signal;
    }
    gathered.compare(given, ready.settings.settings.judging);
    output.close(given.note);
    isWhole = true;
    io.writeError(fromJournalLine(found.wereThere, items.length, before, args.journal));
    io.writeError(refusedLines(gathered.refusals, items.length, args.output));
    return gathered.refusals.length === 0 ? 0 : 1;
  } finally {
    unwatch();
    if (!isWhole) output.abandon();
    journal.close();
    await pool.close();
  }
}

/** The clinic's own error of the count as far as one was named, and what is said of it. */
export async function reliabilityOf(
  { reliability }: Pick<AssessArguments, 'reliability'>,
  io: Pick<Io, 'readFile'>,
): Promise<GivenReliability> {
  if (reliability === undefined) return { own: {}, note: '' };
  return readOwnReliability(reliability.file, await readNamed(reliability.file, io), reliability.of);
}

/** Every protocol of a test has the same parameters: a wrong one is found now and not in the middle of the list. */
export function refuseBadSettings({ settings }: ReadyPlan): void {
  for (const [first] of [PROTOCOLS, PULL_PROTOCOLS, HOP_PROTOCOLS]) settings.adjust(first!);
}
