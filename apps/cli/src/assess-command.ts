import { HOP_PROTOCOLS, PROTOCOLS, PULL_PROTOCOLS } from '@surae/shared';
import { type WorkItem, withRecipes } from '@surae/study';
import { testOf } from '@surae/study/words';
import type { AssessArguments } from './assess-arguments.ts';
import type { SetKey } from './comparison-groups.ts';
import { eachComparison } from './comparisons.ts';
import { type Entry, unpackedEntry } from './entry.ts';
import { foundFiles, passedOverLine } from './found-files.ts';
import type { Io } from './io.ts';
import { Journal, type Place } from './journal.ts';
import { manifestItems } from './manifest.ts';
import { type GivenReliability, readOwnReliability } from './own-reliability.ts';
import { runPlan } from './plan-of-arguments.ts';
import { Progress } from './progress.ts';
import { readNamed } from './read-named.ts';
import { type ReadyPlan, readyPlan, toldHashes } from './ready-plan.ts';
import { recipeReader } from './recipe-file.ts';
import { runItems } from './run-items.ts';
import { type RunOutput, runOutput } from './run-output.ts';
import { fromJournalLine, refusedLines, stoppedLine } from './run-words.ts';
import { notedTwin } from './twin-note.ts';

/** What stays in memory of a recording that may be compared: what it is grouped by, and where the rest lies. */
interface KeptSet extends SetKey {
  readonly place: Place;
}

/** Assesses all recordings of a list, several at once; results lie in the journal, and one at a time is in memory. */
export async function assessCommand(args: AssessArguments, io: Io): Promise<number> {
  const given = await reliabilityOf(args, io);
  const items = await workList(args, io);
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
    const { judging } = ready.settings.settings;
    for (const one of eachComparison(gathered.sets, gathered.fetch, given, judging)) output.compare(one);
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

/** Entries on their way from the journal to the output, in the order of the list. */
class Gathered {
  readonly sets: KeptSet[] = [];
  readonly refusals: string[] = [];
  readonly #output: RunOutput;
  readonly #journal: Journal;
  readonly #width: number;
  readonly #seen = new Map<string, string>();

  constructor(output: RunOutput, journal: Journal, width: number) {
    this.#output = output;
    this.#journal = journal;
    this.#width = width;
  }

  readonly fetch = ({ place }: KeptSet): NonNullable<Entry['set']> => unpackedEntry(this.#journal.read(place)).set!;

  add(item: WorkItem, place: Place): void {
    const entry = unpackedEntry(this.#journal.read(place));
    if (entry.refusal !== null) this.refusals.push(entry.refusal);
    if (entry.set !== undefined) {
      const { person, visit, side, test, protocol } = entry.set;
      this.sets.push({ person, visit, side, test, protocol: { id: protocol.id }, place });
    }
    const twin = this.#twinOf(item, entry);
    this.#output.add(twin === undefined ? entry : notedTwin(entry, twin, this.#width));
  }

  /** The file before it that had the same bytes: a copy under another name, or a row written twice. */
  #twinOf({ file }: WorkItem, { refusal, sha256 }: Entry): string | undefined {
    if (refusal !== null || sha256 === null) return undefined;
    const twin = this.#seen.get(sha256);
    if (twin === undefined) this.#seen.set(sha256, file);
    return twin;
  }
}

async function reliabilityOf({ reliability }: AssessArguments, io: Io): Promise<GivenReliability> {
  if (reliability === undefined) return { own: {}, note: '' };
  return readOwnReliability(reliability.file, await readNamed(reliability.file, io), reliability.of);
}

/** Every protocol of a test has the same parameters: a wrong one is found now and not in the middle of the list. */
export function refuseBadSettings({ settings }: ReadyPlan): void {
  for (const [first] of [PROTOCOLS, PULL_PROTOCOLS, HOP_PROTOCOLS]) settings.adjust(first!);
}

async function workList(args: AssessArguments, io: Io): Promise<WorkItem[]> {
  if (args.manifest !== undefined) {
    const bytes = await readNamed(args.manifest, io);
    return withRecipes(manifestItems(args.manifest, bytes, args.given), recipeReader(io.readFile));
  }
  const found = await foundFiles(args.files, io);
  io.writeError(passedOverLine(found));
  return found.files.map(({ path, refusal }) => ({ file: path, path, about: args.given, carried: {}, refusal }));
}
