import { refused, type WorkItem } from '@surae/study';
import { entryOf, packedEntry } from './entry.ts';
import { inOrder } from './in-order.ts';
import type { Journal, Place } from './journal.ts';
import type { Answer, Pool } from './pool.ts';
import type { ReadyPlan } from './ready-plan.ts';

/** A recording whose result lies in the journal. */
export interface Finished {
  readonly item: WorkItem;
  readonly place: Place;
  /** whether it was there before this run */
  readonly wasThere: boolean;
}

/** What holds for the whole run. */
export interface Run {
  readonly plan: Pick<ReadyPlan, 'want' | 'carried'>;
  readonly pool: Pool;
  readonly journal: Journal;
  /** all that a result hangs on but the bytes, as a hash */
  readonly told: (item: WorkItem) => string;
  readonly stop: AbortSignal;
  /** is told of each recording as soon as it is finished, in whatever order */
  readonly finished: (one: Finished) => void;
}

/** Why a recording has no result: its worker ended, and nothing is known but that. */
function lostAnswer(item: WorkItem, error: unknown, plan: Run['plan']): Extract<Answer, { kind: 'new' }> {
  const reason = `${item.file}: ${error instanceof Error ? error.message : String(error)}`;
  return { kind: 'new', entry: packedEntry(entryOf(refused(item, reason, null), plan)) };
}

/** All recordings of a list in its order, each kept in the journal as soon as it is finished. */
export async function* runItems(items: readonly WorkItem[], run: Run): AsyncGenerator<Finished> {
  const { plan, pool, journal, told, stop, finished } = run;
  const work = async (item: WorkItem): Promise<Finished | undefined> => {
    const hash = told(item);
    let answer: Answer;
    try {
      answer = await pool.run({ item, known: journal.known(hash) });
    } catch (error) {
      if (stop.aborted) return undefined;
      answer = lostAnswer(item, error, plan);
    }
    if (answer.kind === 'not-expected') answer = lostAnswer(item, answer.reason, plan);
    const place = answer.kind === 'known' ? journal.placeOf(hash, answer.sha256) : journal.add(hash, answer.entry);
    const one = { item, place, wasThere: journal.wasThere(place) };
    finished(one);
    return one;
  };
  // the next recording lies ready when a worker has done one
  const atOnce = 2 * pool.workers;
  for await (const one of inOrder(items, work, { atOnce }, stop)) {
    // what was abandoned ends the row: those after it are in the journal
    if (one === undefined) return;
    yield one;
  }
}
