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

/** An entry that an undo can take back, where its item stood before it, and the one that stood before. */
interface Standing {
  readonly entry: BlindEntry;
  readonly item: string;
  readonly before: ItemState;
  readonly below: Standing | null;
}

/** What a list comes to so far: a further entry changes a copy, so that a long list is not gone through for each. */
class Progress {
  readonly items: Map<string, ItemState>;
  readonly afterOpening: Set<string>;
  standing: Standing | null;
  lock: string | null;
  isOpened: boolean;

  constructor(from?: Progress) {
    this.items = new Map(from?.items);
    this.afterOpening = new Set(from?.afterOpening);
    this.standing = from?.standing ?? null;
    this.lock = from?.lock ?? null;
    this.isOpened = from?.isOpened ?? false;
  }

  /** @throws {@link StudyError} where something was said after the lock, and for a step that cannot be */
  add(one: BlindEntry): void {
    const { entry, says, hash } = one;
    if (this.lock !== null && says.step !== 'open') {
      throw turn(entry, 'nothing but the opening of the names after the lock', `a ${says.step}`);
    }
    if (says.step === 'lock') this.lock = hash;
    else if (says.step === 'open') this.isOpened = true;
    else if (says.step === 'undo') this.#undo(entry, says.entry);
    else {
      const { item } = says;
      const before = this.items.get(item) ?? NOTHING_SAID;
      this.items.set(item, afterStep(before, says, `entry ${entry}`));
      this.standing = { entry: one, item, before, below: this.standing };
      if (this.isOpened) this.afterOpening.add(item);
    }
  }

  #undo(entry: number, asked: number): void {
    const last = this.standing;
    if (last?.entry.entry !== asked) {
      throw turn(entry, `an undo of ${last === null ? 'nothing' : `entry ${last.entry.entry}`}`, `of ${asked}`);
    }
    this.items.set(last.item, last.before);
    this.standing = last.below;
    if (this.isOpened) this.afterOpening.add(last.item);
  }
}

/** What stands behind each book that was made here. */
const progressOf = new WeakMap<Pick<VerdictBook, 'entries'>, Progress>();

function turn(entry: number, expected: string, actual: string): StudyError {
  return new StudyError('out-of-turn', { path: `entry ${entry}`, expected, actual });
}

/** What a list comes to with further entries behind it. */
function after(book: Pick<VerdictBook, 'entries'>, added: readonly BlindEntry[]): Progress {
  const known = progressOf.get(book);
  const progress = new Progress(known);
  for (const one of known === undefined ? [...book.entries, ...added] : added) progress.add(one);
  return progress;
}

function bookOf(key: BlindKey, entries: readonly BlindEntry[], progress: Progress): VerdictBook {
  const { items, afterOpening, standing, lock, isOpened } = progress;
  const told = [...items];
  const book: VerdictBook = {
    rater: key.rater,
    entries,
    counts: new Map(told.flatMap(([item, { count }]) => (count === null ? [] : [[item, count]]))),
    verdicts: new Map(told.flatMap(([item, { verdicts }]) => (verdicts.size === 0 ? [] : [[item, verdicts]]))),
    marks: new Map(told.flatMap(([item, { marks }]) => (marks === null ? [] : [[item, marks]]))),
    standing: standing?.entry ?? null,
    lock,
    isOpened,
    afterOpening: [...afterOpening].sort(),
  };
  progressOf.set(book, progress);
  return book;
}

/**
 * What a rater came to, from the file of verdicts.
 *
 * @throws {@link StudyError} `broken-chain` where something was changed, taken out or put in; `out-of-turn` after the lock, and for an
 *   undo of anything but the last step that stands; `bad-file`
 */
export function readVerdicts(text: string, key: BlindKey, file?: string): VerdictBook {
  const entries = readChain(text, startOf(key), (says, path) => checkedStep(key, says, path), file);
  return bookOf(key, entries, after({ entries }, []));
}

/** A list in which nobody said anything. */
export function emptyBook(key: BlindKey): VerdictBook {
  return bookOf(key, [], new Progress());
}

/** What a rater came to with further entries, as {@link nextSteps} made them. @throws {@link StudyError} as there */
export function bookWith(book: VerdictBook, key: BlindKey, added: readonly BlindEntry[]): VerdictBook {
  return bookOf(key, [...book.entries, ...added], after(book, added));
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
  const added = entries.slice(book.entries.length);
  after(book, added);
  return added;
}

/** Items without a count, in their order: what is still to be looked at. */
export function itemsLeft({ counts }: Pick<VerdictBook, 'counts'>, { items }: BlindKey): string[] {
  return items.filter(({ item }) => !counts.has(item)).map(({ item }) => item);
}
