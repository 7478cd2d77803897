import type { Settings } from '@surae/analysis';
import type { WorkItem } from '@surae/study';
import type { SetKey } from './comparison-groups.ts';
import { eachComparison } from './comparisons.ts';
import { type Entry, unpackedEntry } from './entry.ts';
import type { Journal, Place } from './journal.ts';
import type { GivenReliability } from './own-reliability.ts';
import type { RunOutput } from './run-output.ts';
import { notedTwin } from './twin-note.ts';

/** What stays in memory of a recording that may be compared: what it is grouped by, and where the rest lies. */
interface KeptSet extends SetKey {
  readonly place: Place;
}

/** Entries on their way from the journal to the output, in the order of the list. */
export class Gathered {
  readonly #sets: KeptSet[] = [];
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

  readonly #fetch = ({ place }: KeptSet): NonNullable<Entry['set']> => unpackedEntry(this.#journal.read(place)).set!;

  add(item: WorkItem, place: Place): void {
    const entry = unpackedEntry(this.#journal.read(place));
    if (entry.refusal !== null) this.refusals.push(entry.refusal);
    if (entry.set !== undefined) {
      const { person, visit, side, test, protocol } = entry.set;
      this.#sets.push({ person, visit, side, test, protocol: { id: protocol.id }, place });
    }
    const twin = this.#twinOf(item, entry);
    this.#output.add(twin === undefined ? entry : notedTwin(entry, twin, this.#width));
  }

  /** Puts beside each other what belongs together, when all are there. */
  compare(given: GivenReliability, judging: Settings['judging']): void {
    for (const one of eachComparison(this.#sets, this.#fetch, given, judging)) this.#output.compare(one);
  }

  /** The file before it that had the same bytes: a copy under another name, or a row written twice. */
  #twinOf({ file }: WorkItem, { refusal, sha256 }: Entry): string | undefined {
    if (refusal !== null || sha256 === null) return undefined;
    const twin = this.#seen.get(sha256);
    if (twin === undefined) this.#seen.set(sha256, file);
    return twin;
  }
}
