import {
  type AutomaticCount,
  agreementOfPairs,
  type BlindEntry,
  type BlindKey,
  type BlindStep,
  type BlindTrial,
  blindDefaults,
  blindedOrder,
  type DeclaredStudy,
  emptyBook,
  entryLine,
  itemsLeft,
  keyText,
  nextSteps,
  type OpenedRater,
  type PairOfCounts,
  type PairOfLists,
  pairedLists,
  parseBlindKey,
  readVerdicts,
  StudyError,
  type VerdictBook,
} from '@surae/study';
import type { ItemTrace } from './item-trace.ts';
import { RecountSession } from './recount-session.ts';

/** What is kept of one rater. */
export interface KeptRater {
  readonly key: BlindKey;
  readonly book: VerdictBook;
}

/** What the desk stands on: the study, its recordings, and where lists are kept. */
export interface RecountBase {
  readonly declared: DeclaredStudy;
  /** recordings that are counted again. @throws StudyError where there are none */
  readonly trials: () => readonly BlindTrial[];
  readonly kept: (rater: string) => KeptRater | null;
  /** resolves when the key is kept, and entries behind those of the same key that are there */
  readonly keep: (key: BlindKey, entries: readonly BlindEntry[]) => Promise<void>;
  readonly trace: (sha256: string) => Promise<ItemTrace>;
  readonly automatic: () => readonly AutomaticCount[];
}

/** How far one rater is. */
export interface RaterState {
  readonly rater: string;
  readonly state: 'new' | 'begun' | 'whole' | 'locked' | 'opened';
  readonly left: number;
  readonly total: number;
  readonly lock: string | null;
  /** the names were opened before the lock: what is said since is marked and left out */
  readonly isEarly: boolean;
}

/** The pairs that are held against each other, and how far they agree. */
export interface RecountAgreement {
  readonly lists: readonly PairOfLists[];
  readonly pairs: readonly PairOfCounts[];
  readonly raters: readonly OpenedRater[];
  readonly automatic: readonly AutomaticCount[];
}

/** All raters of a study on this machine: each has an order and a list of their own. */
export class RecountDesk {
  readonly #base: RecountBase;
  #agreement: RecountAgreement | undefined;

  constructor(base: RecountBase) {
    this.#base = base;
  }

  get names(): readonly string[] {
    return this.#base.declared.study.blinding?.raters ?? [];
  }

  /** @throws {@link StudyError} where nothing can be counted again */
  states(): RaterState[] {
    return this.names.map((rater) => {
      const { key, book } = this.#of(rater);
      const left = itemsLeft(book, key).length;
      return {
        rater,
        state: stateOf(book, left),
        left,
        total: key.items.length,
        lock: book.lock,
        isEarly: book.isOpened && book.lock === null,
      };
    });
  }

  /** One rater at work. What another one said is not in it. */
  begin(rater: string): RecountSession {
    const { key, book } = this.#of(rater);
    return new RecountSession({
      key,
      book,
      keep: (added) => this.#base.keep(key, added),
      trace: this.#base.trace,
    });
  }

  /**
   * Records that the names of these raters are opened, once all of them have locked.
   *
   * @throws {@link StudyError} `out-of-turn` while one of them has not locked
   */
  async open(raters: readonly string[], by: string, at: string | null, why: string): Promise<void> {
    const added = raters.map((rater) => {
      const { key, book } = this.#of(rater);
      if (book.lock === null) {
        throw new StudyError('out-of-turn', { path: rater, expected: 'locked verdicts', actual: 'an open list' });
      }
      const step: BlindStep = { step: 'open', by, at, why };
      return { key, entries: book.isOpened ? [] : nextSteps(book, key, [step]) };
    });
    for (const { key, entries } of added) if (entries.length > 0) await this.#base.keep(key, entries);
  }

  /** Who has locked and is opened, held against each other; null before anybody is. */
  agreement(): RecountAgreement | null {
    const raters = this.names.flatMap((rater): OpenedRater[] => {
      const kept = this.#base.kept(rater);
      return kept !== null && kept.book.lock !== null && kept.book.isOpened ? [kept] : [];
    });
    if (raters.length === 0) return null;
    const last = this.#agreement;
    const isSame = (one: OpenedRater, at: number): boolean => last?.raters[at]?.book === one.book;
    if (last?.raters.length === raters.length && raters.every(isSame)) return last;
    const automatic = this.#base.automatic();
    const lists = pairedLists(raters, automatic, blindDefaults);
    this.#agreement = { lists, pairs: agreementOfPairs(lists, blindDefaults), raters, automatic };
    return this.#agreement;
  }

  /** The verdicts of a rater as the file that the command line reads. */
  verdictsText(rater: string): string {
    return this.#of(rater).book.entries.map(entryLine).join('');
  }

  keyText(rater: string): string {
    return keyText(this.#of(rater).key);
  }

  /**
   * Takes in a file of verdicts that goes on where what is kept here ends.
   *
   * @returns how many entries are new
   * @throws {@link StudyError} `broken-chain` where it does not go on from here, and as reading it does
   */
  async takeInVerdicts(rater: string, text: string, file: string): Promise<number> {
    const { key, book } = this.#of(rater);
    const { entries } = book;
    const read = readVerdicts(text, key, file);
    const apart = entries.findIndex((one, at) => one.hash !== read.entries[at]?.hash);
    if (apart !== -1) {
      const expected = 'the list as it is kept here, and more';
      const actual = apart < read.entries.length ? 'another entry' : 'a shorter list';
      throw new StudyError('broken-chain', { file, path: `entry ${apart + 1}`, expected, actual });
    }
    const added = read.entries.slice(entries.length);
    if (added.length > 0) await this.#base.keep(key, added);
    return added.length;
  }

  /**
   * Takes in the key of a rater who began elsewhere, so that the order is the same here.
   *
   * @throws {@link StudyError} `out-of-turn` where the rater has another key here; `bad-file` where it is no key of this study
   */
  async takeInKey(text: string, file: string): Promise<string> {
    const key = parseBlindKey(text, this.#base.declared, file);
    const kept = this.#base.kept(key.rater);
    if (kept !== null && keyText(kept.key) !== keyText(key)) {
      throw new StudyError('out-of-turn', {
        file,
        path: 'items',
        expected: 'the key that is kept here',
        actual: 'another',
      });
    }
    if (kept === null) await this.#base.keep(key, []);
    return key.rater;
  }

  /** What is shown of a recording once its name is open. */
  trace(sha256: string): Promise<ItemTrace> {
    return this.#base.trace(sha256);
  }

  #of(rater: string): KeptRater {
    const kept = this.#base.kept(rater);
    if (kept !== null) return kept;
    const key = blindedOrder(this.#base.declared, rater, this.#base.trials());
    return { key, book: emptyBook(key) };
  }
}

function stateOf(book: VerdictBook, left: number): RaterState['state'] {
  if (book.lock !== null) return book.isOpened ? 'opened' : 'locked';
  if (left === 0) return 'whole';
  return book.entries.length === 0 ? 'new' : 'begun';
}
