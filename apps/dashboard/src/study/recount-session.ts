import {
  type BlindEntry,
  type BlindKey,
  type BlindStep,
  type BlindVerdict,
  bookWith,
  itemsLeft,
  nextSteps,
  type VerdictBook,
} from '@surae/study';
import type { ItemTrace } from './item-trace.ts';
import { nextTime, tracePeaks } from './trace-peaks.ts';

/** A verdict about a place this near to a mark is about that mark [s]; ours: repetitions lie further apart. */
const nearS = 0.25;

/** A time as it is kept and read out: no cursor stands finer [s]. */
function toMilliseconds(timeS: number): number {
  return Math.round(timeS * 1000) / 1000;
}

/** A repetition that the rater sees. */
export interface RecountMark {
  /** its number in the list of the rater */
  readonly repetition: number;
  /** its place among the marks of the item, from 1 */
  readonly place: number;
  readonly atS: number;
  readonly verdict: BlindVerdict;
}

/** What was done last, for whoever does not see the picture. */
export type RecountNews =
  | { readonly code: 'put' | 'changed' | 'same' | 'taken'; readonly mark: RecountMark }
  | { readonly code: 'undone' | 'nothing-to-undo' | 'nothing-here' | 'no-peak' | 'not-kept' | 'not-read' }
  | { readonly code: 'counted'; readonly count: number }
  | { readonly code: 'item' | 'all-counted' | 'none-marked' };

/** What a session of one rater stands on. */
export interface RecountSource {
  readonly key: BlindKey;
  /** what was said before */
  readonly book: VerdictBook;
  /** resolves when the entries are kept for good */
  readonly keep: (entries: readonly BlindEntry[]) => Promise<void>;
  /** what is shown of a recording */
  readonly trace: (sha256: string) => Promise<ItemTrace>;
}

/**
 * One rater at work: which item is shown, where the cursor is, what was said. Each step becomes an entry of the list, and counts once it
 * is kept. It tells `change` after everything that can be seen.
 */
export class RecountSession extends EventTarget {
  readonly #source: RecountSource;
  #book: VerdictBook;
  #place: number;
  #trace: ItemTrace | undefined;
  #peaks: readonly number[] = [];
  #cursorS = 0;
  #news: RecountNews = { code: 'item' };
  #work: Promise<void> = Promise.resolve();

  constructor(source: RecountSource) {
    super();
    this.#source = source;
    this.#book = source.book;
    this.#place = this.#placeToGoOn();
  }

  get book(): VerdictBook {
    return this.#book;
  }

  get key(): BlindKey {
    return this.#source.key;
  }

  /** `item-001`: the name that tells nothing */
  get item(): string {
    return this.key.items[this.#place]!.item;
  }

  /** from 1, of how many */
  get place(): { readonly of: number; readonly at: number } {
    return { at: this.#place + 1, of: this.key.items.length };
  }

  get left(): number {
    return itemsLeft(this.#book, this.key).length;
  }

  /** undefined while it is read */
  get trace(): ItemTrace | undefined {
    return this.#trace;
  }

  get cursorS(): number {
    return this.#cursorS;
  }

  get news(): RecountNews {
    return this.#news;
  }

  /** Marks of the item that is shown, by time. */
  get marks(): RecountMark[] {
    const { item } = this;
    const verdicts = this.#book.verdicts.get(item);
    return [...(this.#book.marks.get(item) ?? [])]
      .sort(([, one], [, other]) => one - other)
      .map(([repetition, atS], at) => ({ repetition, place: at + 1, atS, verdict: verdicts!.get(repetition)! }));
  }

  /** How many repetitions of the item count by what was said of each. */
  get counting(): number {
    return [...(this.#book.verdicts.get(this.item)?.values() ?? [])].filter((verdict) => verdict === 'yes').length;
  }

  /** How many count by what was confirmed; null before it is. */
  get confirmed(): number | null {
    return this.#book.counts.get(this.item) ?? null;
  }

  /** The item was filled in as a table: its repetitions are those that were shown there. */
  get isFromTable(): boolean {
    const { item } = this;
    return !this.#book.marks.has(item) && (this.#book.counts.has(item) || this.#book.verdicts.has(item));
  }

  get canUndo(): boolean {
    const says = this.#book.standing?.says;
    return says !== undefined && 'item' in says && says.item === this.item;
  }

  /** The mark that the cursor is at. */
  get markHere(): RecountMark | undefined {
    return this.#markNear(this.#cursorS);
  }

  /** Reads what is shown of the item; to be called once at the begin. */
  async show(): Promise<void> {
    const { sha256, item } = this.key.items[this.#place]!;
    this.#trace = undefined;
    this.#peaks = [];
    this.#cursorS = 0;
    this.#tell(this.#news);
    try {
      const trace = await this.#source.trace(sha256);
      if (item !== this.item) return;
      this.#trace = trace;
      this.#peaks = tracePeaks(trace).map(toMilliseconds);
      this.#cursorS = toMilliseconds(trace.timesS[0] ?? 0);
      this.#tell(this.#news);
    } catch {
      this.#tell({ code: 'not-read' });
    }
  }

  moveTo(timeS: number): void {
    const times = this.#trace?.timesS;
    if (times === undefined || times.length === 0) return;
    this.#cursorS = toMilliseconds(Math.min(times.at(-1)!, Math.max(times[0]!, timeS)));
    this.#tell(this.#news);
  }

  moveBy(stepS: number): void {
    this.moveTo(this.#cursorS + stepS);
  }

  /** To the next peak of the line, or to the next mark where that comes first. */
  toPeak(direction: 1 | -1): void {
    if (this.#trace === undefined) return;
    const places = [...this.#peaks, ...this.marks.map(({ atS }) => atS)].sort((a, b) => a - b);
    const next = nextTime(places, this.#cursorS, direction);
    if (next === undefined) this.#tell({ code: 'no-peak' });
    else this.moveTo(next);
  }

  /** A repetition at the cursor with this verdict, or this verdict about the mark that is there. */
  say(verdict: BlindVerdict): Promise<void> {
    const { item, cursorS: atS } = this;
    if (this.#trace === undefined) return this.#work;
    return this.#act(async () => {
      if (item !== this.item) return;
      const here = this.#markNear(atS);
      if (here?.verdict === verdict) {
        this.#tell({ code: 'same', mark: here });
        return;
      }
      const marks = this.#book.entries.flatMap(({ says }) =>
        says.step === 'mark' && says.item === item ? [says.repetition] : [],
      );
      const repetition = here?.repetition ?? Math.max(0, ...marks) + 1;
      await this.#write(
        here === undefined
          ? { step: 'mark', item, repetition, atS, verdict }
          : { step: 'verdict', item, repetition, verdict },
      );
      const mark = this.marks.find((one) => one.repetition === repetition)!;
      this.#tell({ code: here === undefined ? 'put' : 'changed', mark });
    });
  }

  /** Takes the mark at the cursor away. */
  takeAway(): Promise<void> {
    const { item, cursorS: atS } = this;
    return this.#act(async () => {
      if (item !== this.item) return;
      const mark = this.#markNear(atS);
      if (mark === undefined) {
        this.#tell({ code: 'nothing-here' });
        return;
      }
      await this.#write({ step: 'unmark', item, repetition: mark.repetition });
      this.#tell({ code: 'taken', mark });
    });
  }

  /** Takes the last step about this item back. */
  undo(): Promise<void> {
    return this.#act(async () => {
      if (!this.canUndo) {
        this.#tell({ code: 'nothing-to-undo' });
        return;
      }
      await this.#write({ step: 'undo', entry: this.#book.standing!.entry });
      this.#tell({ code: 'undone' });
    });
  }

  /**
   * The marks of this item are all there are: their count is said, and the next item without a count is shown. Where nothing is marked it
   * asks once.
   */
  done(): Promise<void> {
    if (this.#trace === undefined) return this.#work;
    return this.#act(async () => {
      const { item, counting, confirmed } = this;
      if (confirmed === null && !this.#book.verdicts.has(item) && this.#news.code !== 'none-marked') {
        this.#tell({ code: 'none-marked' });
        return;
      }
      if (confirmed === null) await this.#write({ step: 'count', item, count: counting });
      this.#news = { code: 'counted', count: confirmed ?? counting };
      const left = itemsLeft(this.#book, this.key);
      if (left.length === 0) {
        this.#tell({ code: 'all-counted' });
        return;
      }
      const names = this.key.items.map((one) => one.item);
      const after = left.find((name) => names.indexOf(name) > this.#place) ?? left[0]!;
      await this.#go(names.indexOf(after));
    });
  }

  /** The item before or after, whether it has a count or not. */
  step(direction: 1 | -1): Promise<void> {
    return this.#act(async () => {
      const place = this.#place + direction;
      if (place < 0 || place >= this.key.items.length) return;
      this.#news = { code: 'item' };
      await this.#go(place);
    });
  }

  /** Closes the list for good. */
  lock(by: string, at: string | null): Promise<void> {
    return this.#act(async () => {
      await this.#write({ step: 'lock', by, at });
      this.#tell(this.#news);
    });
  }

  #markNear(timeS: number): RecountMark | undefined {
    const apart = ({ atS }: RecountMark): number => Math.abs(atS - timeS);
    return this.marks.filter((one) => apart(one) <= nearS).sort((one, other) => apart(one) - apart(other))[0];
  }

  async #go(place: number): Promise<void> {
    this.#place = place;
    await this.show();
  }

  /** The item that was worked at last while it has no count, else the first without one. */
  #placeToGoOn(): number {
    const names = this.key.items.map(({ item }) => item);
    const left = itemsLeft(this.#book, this.key);
    const last = this.#book.standing?.says;
    const item = last !== undefined && 'item' in last && left.includes(last.item) ? last.item : left[0];
    return item === undefined ? 0 : names.indexOf(item);
  }

  /** One after the other: what comes while something is being kept waits for it. */
  #act(work: () => Promise<void>): Promise<void> {
    this.#work = this.#work.then(work).catch(() => this.#tell({ code: 'not-kept' }));
    return this.#work;
  }

  async #write(step: BlindStep): Promise<void> {
    const entries = nextSteps(this.#book, this.key, [step]);
    await this.#source.keep(entries);
    this.#book = bookWith(this.#book, this.key, entries);
  }

  #tell(news: RecountNews): void {
    this.#news = news;
    this.dispatchEvent(new Event('change'));
  }
}
