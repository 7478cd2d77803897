import { RecipeShelf, refused, type WorkItem } from '@surae/study';
import type { AssessArguments } from './assess-arguments.ts';
import { refuseBadSettings } from './assess-command.ts';
import { entryOf, unpackedEntry } from './entry.ts';
import { inOrder } from './in-order.ts';
import { InputLines, linesOf } from './input-lines.ts';
import type { Io } from './io.ts';
import { runPlan } from './plan-of-arguments.ts';
import { readyPlan } from './ready-plan.ts';
import { recipeReader } from './recipe-file.ts';

/** Recordings that may be ahead of the answer that is awaited, for each worker: what is held is bounded however long the input is. */
const AHEAD = 8;

/**
 * The worker of a scheduler: recordings named on standard input, for each one line of JSON on standard output, in their order and
 * as soon as it is known. A refusal is an answer.
 *
 * @returns 0 when every line has its answer
 */
export async function stdinCommand(args: AssessArguments, io: Io): Promise<number> {
  const plan = await runPlan(args, [], io);
  refuseBadSettings(readyPlan(plan));
  const pool = await io.startPool(plan, { ...args, recordings: undefined });
  const stop = new AbortController();
  let signal = 0;
  const unwatch = io.onStop((number) => {
    signal = number;
    stop.abort();
    void pool.close();
  });
  const answer = async (item: WorkItem): Promise<string | undefined> => {
    try {
      const found = await pool.run({ item, known: [] });
      return found.kind === 'new' ? unpackedEntry(found.entry.body).json : undefined;
    } catch (error) {
      if (stop.signal.aborted) return undefined;
      const reason = `${item.file}: ${error instanceof Error ? error.message : String(error)}`;
      return entryOf(refused(item, reason, null), plan).json;
    }
  };
  try {
    const { workers } = pool;
    const asked = items(args, io);
    for await (const line of inOrder(asked, answer, { atOnce: workers, ahead: AHEAD * workers }, stop.signal)) {
      if (line === undefined) break;
      io.writeOut(`${line}\n`);
    }
    return stop.signal.aborted ? 128 + signal : 0;
  } finally {
    unwatch();
    await pool.close();
  }
}

async function* items({ lines, given }: AssessArguments, io: Io): AsyncGenerator<WorkItem> {
  const input = new InputLines(lines!, given);
  const shelf = new RecipeShelf(recipeReader(io.readFile));
  for await (const line of linesOf(io.input())) {
    const item = input.item(line);
    if (item !== undefined) yield await shelf.filled(item);
  }
}
