import { canonicalHash } from '../canonical-hash.ts';
import { StudyError } from '../errors.ts';
import { nextEntry, readChain } from '../hash-chain.ts';
import { type BlindEntry, type BlindStep, type BlindVerdict, checkedStep } from './blind-step.ts';
import { type BlindKey, keyHash } from './blinded-order.ts';
import { afterStep, type ItemState, NOTHING_SAID } from './item-marks.ts';

/** What a rater came to. */
export interface VerdictBook {
  readonly rater: string;
  readonly entries: readonly BlindEntry[];
  readonly counts: ReadonlyMap<string, number>;
  /** verdicts of an item by the number of the repetition */
  readonly verdicts: ReadonlyMap<string, ReadonlyMap<number, BlindVerdict>>;
  /** when the repetitions are that the rater marked, by their number, for items with marks [s] */
  readonly marks: ReadonlyMap<string, ReadonlyMap<number, number>>;
  /** the entry that an undo takes back: the last one about an item that still stands; null without any */
  readonly standing: BlindEntry | null;
  /** hash of the entry that locks; null while it is open: whoever writes it down elsewhere can tell that nothing was cut off */
  readonly lock: string | null;
  readonly isOpened: boolean;
  /** items about which something was said after the names were opened early */
  readonly afterOpening: readonly string[];
}

function startOf(key: BlindKey): string {
  return canonicalHash({ list: 'surae-study-verdicts', study: key.study, rater: key.rater, key: keyHash(key) });
}

/** Where an item stood before an entry, so that an undo finds it again. */
interface Standing {
  readonly entry: BlindEntry;
  readonly item: string;
  readonly before: ItemState;
}

function turn(entry: number, expected: string, actual: string): StudyError {
  return new StudyError('out-of-turn', { path: `entry ${entry}`, expected, actual });
}

/** What entries come to; refused where something was said after the lock. */
function bookOf(key: BlindKey, entries: readonly BlindEntry[]): VerdictBook {
  const items = new Map<string, ItemState>();
  const standing: Standing[] = [];
  const afterOpening = new Set<string>();
  let lock: string | null = null;
  let isOpened = false;
  for (const one of entries) {
    const { entry, says, hash } = one;
    if (lock !== null && says.step !== 'open') {
      throw turn(entry, 'nothing but the opening of the names after the lock', `a ${says.step}`);
    }
    if (says.step === 'lock') lock = hash;
    else if (says.step === 'open') isOpened = true;
    else if (says.step === 'undo') {
      const last = standing.pop();
      if (last?.entry.entry !== says.entry) {
        throw turn(
          entry,
          `an undo of ${last === undefined ? 'nothing' : `entry ${last.entry.entry}`}`,
          `of ${says.entry}`,
        );
      }
      items.set(last.item, last.before);
      if (isOpened) afterOpening.add(last.item);
    } else {
      const before = items.get(says.item) ?? NOTHING_SAID;
      items.set(says.item, afterStep(before, says, `entry ${entry}`));
      standing.push({ entry: one, item: says.item, before });
      if (isOpened) afterOpening.add(says.item);
    }
  }
  const told = [...items];
  return {
    rater: key.rater,
    entries,
    counts: new Map(told.flatMap(([item, { count }]) => (count === null ? [] : [[item, count]]))),
    verdicts: new Map(told.flatMap(([item, { verdicts }]) => (verdicts.size === 0 ? [] : [[item, verdicts]]))),
    marks: new Map(told.flatMap(([item, { marks }]) => (marks === null ? [] : [[item, marks]]))),
    standing: standing.at(-1)?.entry ?? null,
    lock,
    isOpened,
    afterOpening: [...afterOpening].sort(),
  };
}

/**
 * What a rater came to, from the file of verdicts.
 *
 * @throws {@link StudyError} `broken-chain` where something was changed, taken out or put in; `out-of-turn` after the lock, and for an
 *   undo of anything but the last step that stands; `bad-file`
 */
export function readVerdicts(text: string, key: BlindKey, file?: string): VerdictBook {
  return bookOf(
    key,
    readChain(text, startOf(key), (says, path) => checkedStep(key, says, path), file),
  );
}

/** What a rater came to, from entries that were made here or read before. @throws {@link StudyError} as {@link nextSteps} */
export function verdictBook(key: BlindKey, entries: readonly BlindEntry[]): VerdictBook {
  return bookOf(key, entries);
}

/**
 * The entries to write for further steps.
 *
 * @throws {@link StudyError} `out-of-turn` for anything but an opening after the lock, and for an undo of anything but the last step
 *   that stands; `bad-file` for a step that cannot be
 */
export function nextSteps(
  book: Pick<VerdictBook, 'entries'>,
  key: BlindKey,
  steps: readonly BlindStep[],
): BlindEntry[] {
  const entries = [...book.entries];
  const start = startOf(key);
  for (const step of steps) {
    entries.push(nextEntry(entries, start, checkedStep(key, step, `entry ${entries.length + 1}`)));
  }
  bookOf(key, entries);
  return entries.slice(book.entries.length);
}

/** Items without a count, in their order: what is still to be looked at. */
export function itemsLeft({ counts }: Pick<VerdictBook, 'counts'>, { items }: BlindKey): string[] {
  return items.filter(({ item }) => !counts.has(item)).map(({ item }) => item);
}
