import {
  type BlindEntry,
  type BlindKey,
  type BlindStep,
  blindedOrder,
  blindTrials,
  bookWith,
  type Decision,
  type DecisionEntry,
  decide,
  entryLine,
  keyText,
  nextSteps,
  parseBlindKey,
  type QualityRow,
  qualityRows,
  readDecisions,
  readVerdicts,
  StudyError,
  type StudyResults,
  standingDecisions,
  studyTrials,
  type TrialFacts,
  type VerdictBook,
} from '@surae/study';
import type { KeptTrial, TrialCourse } from './kept-trial.ts';
import { type RaterTexts, sessionResults } from './session-results.ts';
import type { StudyContent } from './study-content.ts';

/** How far assessing has come. */
export interface StudyProgress {
  readonly done: number;
  readonly of: number;
  /** recordings in a second since it was begun; null before the first */
  readonly perS: number | null;
  /** whether it goes on */
  readonly runs: boolean;
}

/** What is kept of a study beside its files: each call is safe once it is fulfilled, and nothing is changed afterwards. */
export interface StudyKeeper {
  /** puts a line at the end of the list of decisions */
  addDecision(line: string): Promise<void>;
  /** keeps the names under which a rater is shown the recordings, before the first is shown */
  addKey(rater: string, text: string): Promise<void>;
  /** puts lines at the end of the verdicts of a rater */
  addVerdicts(rater: string, lines: readonly string[]): Promise<void>;
  /** the bytes of a recording as they came; undefined where they are gone */
  bytes(sha256: string): Promise<Uint8Array | undefined>;
}

/** What a session begins from. */
export interface StudyBeginning {
  readonly id: string;
  readonly content: StudyContent;
  readonly keeper: StudyKeeper;
  /** one for each recording of the content; undefined while it is not assessed */
  readonly trials: readonly (KeptTrial | undefined)[];
  readonly decisions: readonly DecisionEntry[];
  /** by rater: those whose counting was begun */
  readonly raters: ReadonlyMap<string, RaterTexts>;
  /** name and version of what assesses */
  readonly software: string;
}

/** A session tells of any change by this event. */
export const STUDY_CHANGED = 'study-changed';

/**
 * One study while it is looked at: what was declared, what its recordings came to, what was decided and counted again. It tells by the
 * event {@link STUDY_CHANGED} that something came, and knows no element.
 */
export class StudySession extends EventTarget {
  readonly id: string;
  readonly content: StudyContent;
  readonly software: string;
  private readonly keeper: StudyKeeper;
  private readonly kept: (KeptTrial | undefined)[];
  /** places of the recordings in the manifest */
  private readonly places: ReadonlyMap<string, number>;
  private listed: readonly DecisionEntry[];
  private readonly texts: Map<string, RaterTexts>;
  /** as they were read or made last: a long list is not read anew for each step */
  private readonly keys = new Map<string, BlindKey>();
  private readonly books = new Map<string, VerdictBook>();
  private came: StudyProgress;
  private made: StudyResults | undefined;
  private judged: readonly QualityRow[] | undefined;

  constructor({ id, content, keeper, trials, decisions, raters, software }: StudyBeginning) {
    super();
    this.id = id;
    this.content = content;
    this.keeper = keeper;
    this.kept = [...trials];
    this.places = new Map(content.items.map(({ file }, at) => [file, at]));
    this.listed = decisions;
    this.texts = new Map(raters);
    this.software = software;
    const done = this.kept.filter((one) => one !== undefined).length;
    this.came = { done, of: this.kept.length, perS: null, runs: false };
  }

  get progress(): StudyProgress {
    return this.came;
  }

  /** Every recording is assessed or refused. */
  get isWhole(): boolean {
    return this.came.done === this.came.of;
  }

  /** In the order of the manifest; undefined while one is not assessed. */
  get trials(): readonly (KeptTrial | undefined)[] {
    return this.kept;
  }

  get decisions(): readonly DecisionEntry[] {
    return this.listed;
  }

  /** Facts of the recordings that are there, under the declared assessment. */
  get facts(): readonly TrialFacts[] {
    const there = this.kept.filter((one) => one !== undefined);
    return studyTrials(this.content.assessments, there).of.get(this.content.assessments[0]!.key)!;
  }

  /** One row for each recording that is there: what is to be looked at and whether it is taken. */
  get rows(): readonly QualityRow[] {
    this.judged ??= qualityRows(this.content.declared.study, this.facts, standingDecisions(this.listed));
    return this.judged;
  }

  /** Recordings that were refused, each with its reason. */
  get refusals(): readonly { readonly trial: string; readonly reason: string }[] {
    return this.rows.flatMap(({ trial: { trial, refusal: reason } }) => (reason === null ? [] : [{ trial, reason }]));
  }

  /** Raters whose counting was begun. */
  get raters(): readonly string[] {
    return [...this.texts.keys()];
  }

  /** The names under which a rater is shown the recordings; undefined while it was not begun. */
  keyOf(rater: string): BlindKey | undefined {
    const text = this.texts.get(rater)?.key;
    if (text === undefined) return undefined;
    const key = this.keys.get(rater) ?? parseBlindKey(text, this.content.declared);
    this.keys.set(rater, key);
    return key;
  }

  /** What a rater came to; a list that was not begun is empty. */
  book(key: BlindKey): VerdictBook {
    const book = this.books.get(key.rater) ?? readVerdicts(this.texts.get(key.rater)?.verdicts ?? '', key);
    if (this.texts.has(key.rater)) this.books.set(key.rater, book);
    return book;
  }

  /** Lines of decisions as a file has them: the command line reads it. */
  get decisionsText(): string {
    return this.listed.map((entry) => entryLine(entry)).join('');
  }

  /** The files of a rater; undefined while the counting was not begun. */
  textsOf(rater: string): RaterTexts | undefined {
    return this.texts.get(rater);
  }

  /** The course of a recording as it is drawn small; null where there is none. */
  courseOf(trial: string): TrialCourse | null {
    const at = this.places.get(trial);
    return at === undefined ? null : (this.kept[at]?.course ?? null);
  }

  bytes(sha256: string): Promise<Uint8Array | undefined> {
    return this.keeper.bytes(sha256);
  }

  /** Takes what recordings came to, by their place in the manifest. */
  take(found: ReadonlyMap<number, KeptTrial>, progress: StudyProgress): void {
    for (const [at, trial] of found) this.kept[at] = trial;
    this.came = { ...progress, done: this.kept.filter((one) => one !== undefined).length, of: this.kept.length };
    this.changed();
  }

  /**
   * Adds a decision about a trial; fulfilled once it is kept.
   *
   * @throws {@link StudyError} `undeclared-reason`, `unknown-trial`, `bad-file`
   */
  async decide(decision: Omit<Decision, 'sha256'>): Promise<void> {
    const sha256 = this.facts.find(({ trial }) => trial === decision.trial)?.sha256 ?? null;
    const trials = this.content.items.map(({ file }) => file);
    const entry = decide(this.listed, this.content.declared, trials, { ...decision, sha256 });
    await this.keeper.addDecision(entryLine(entry));
    this.listed = [...this.listed, entry];
    this.changed();
  }

  /**
   * Goes on with a list of decisions that was added to elsewhere, such as by the command line: what is here begins it. Gives how many
   * came; fulfilled once they are kept.
   *
   * @throws {@link StudyError} `broken-chain` where the list is another one; `undeclared-reason`, `bad-file`
   */
  async takeDecisions(text: string, file: string): Promise<number> {
    const entries = readDecisions(text, this.content.declared, file);
    const parted = this.listed.find(({ hash }, at) => entries[at]?.hash !== hash);
    if (parted !== undefined) {
      const expected = `a list that goes on from the ${this.listed.length} decisions that are here`;
      const actual = 'another from there on';
      throw new StudyError('broken-chain', { file, path: `entry ${parted.entry}`, expected, actual });
    }
    const fresh = entries.slice(this.listed.length);
    for (const entry of fresh) {
      await this.keeper.addDecision(entryLine(entry));
      this.listed = [...this.listed, entry];
    }
    this.changed();
    return fresh.length;
  }

  /**
   * Begins the counting of a rater: every recording that was read and is not left out, in the declared order. What was begun is gone
   * on with.
   *
   * @throws {@link StudyError} `out-of-range` where the study declares no blinding, not this rater, or too few recordings
   */
  async begin(rater: string): Promise<BlindKey> {
    const before = this.keyOf(rater);
    if (before !== undefined) return before;
    const { declared } = this.content;
    const key = blindedOrder(declared, rater, blindTrials(declared, this.rows));
    await this.takeKey(key);
    return key;
  }

  /** Keeps a key that was made elsewhere for a rater whose counting was not begun here; what was begun is left as it is. */
  async takeKey(key: BlindKey): Promise<void> {
    if (this.texts.has(key.rater)) return;
    await this.keeper.addKey(key.rater, keyText(key));
    this.texts.set(key.rater, { key: keyText(key), verdicts: '' });
    this.keys.set(key.rater, key);
    this.changed();
  }

  /**
   * Adds steps of a rater whose counting was begun; fulfilled once they are kept.
   *
   * @throws {@link StudyError} `out-of-turn` for anything but an opening after the lock; `bad-file`
   */
  async count(key: BlindKey, steps: readonly BlindStep[]): Promise<readonly BlindEntry[]> {
    const before = this.texts.get(key.rater);
    if (before === undefined) throw new Error(`The counting of ${key.rater} was not begun.`);
    const book = this.book(key);
    const entries = nextSteps(book, key, steps);
    const lines = entries.map((entry) => entryLine(entry));
    await this.keeper.addVerdicts(key.rater, lines);
    this.texts.set(key.rater, { ...before, verdicts: before.verdicts + lines.join('') });
    this.books.set(key.rater, bookWith(book, key, entries));
    this.changed();
    return entries;
  }

  /** What the study comes to by now, as `surae study` makes it of the same files: the same bytes. Made anew after a change. */
  results(): StudyResults {
    this.made ??= sessionResults(this);
    return this.made;
  }

  private changed(): void {
    this.made = undefined;
    this.judged = undefined;
    this.dispatchEvent(new Event(STUDY_CHANGED));
  }
}
