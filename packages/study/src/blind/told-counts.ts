import type { BlindVerdict } from './blind-step.ts';
import type { BlindKey } from './blinded-order.ts';
import type { VerdictBook } from './verdict-book.ts';

/** What the automatic count came to. */
export interface AutomaticCount {
  readonly trial: string;
  readonly count: number;
  /** of each repetition, as raters were shown them, from the first on */
  readonly verdicts: readonly BlindVerdict[];
  /** the top of each since the recording begins [s] */
  readonly topsS: readonly number[];
}

/** A rater whose verdicts are locked and whose names are opened. */
export interface OpenedRater {
  readonly key: BlindKey;
  readonly book: VerdictBook;
}

/** One repetition as somebody saw it. */
export interface ToldRepetition {
  /** as it was shown or marked, from 1 */
  readonly repetition: number;
  /** since the recording begins; null where only its number is known [s] */
  readonly atS: number | null;
  readonly verdict: BlindVerdict;
}

/** What one side of a pair says of one recording. */
export interface ToldTrial {
  readonly count: number | null;
  /** the repetitions are numbered as the machine has them, and not marked by a person */
  readonly asShown: boolean;
  /** what is not among the repetitions was not seen */
  readonly isWhole: boolean;
  readonly repetitions: readonly ToldRepetition[];
}

/** What one side of a pair says of each recording. */
export interface ToldCounts {
  readonly name: string;
  readonly of: ReadonlyMap<string, ToldTrial>;
}

/** What the machine says. */
export function toldByMachine(automatic: readonly AutomaticCount[]): ToldCounts {
  return {
    name: 'automatic',
    of: new Map(
      automatic.map(({ trial, count, verdicts, topsS }) => [
        trial,
        {
          count,
          asShown: true,
          isWhole: true,
          repetitions: verdicts.map((verdict, at) => ({ repetition: at + 1, atS: topsS[at] ?? null, verdict })),
        },
      ]),
    ),
  };
}

/** What a rater says of recordings shown for the first or the second time; what was said after an early opening is left out. */
export function toldByRater(
  { key, book }: OpenedRater,
  showing: 1 | 2,
  name: string,
  automatic: readonly AutomaticCount[],
): ToldCounts {
  const tops = new Map(automatic.map(({ trial, topsS }) => [trial, topsS]));
  const shown = key.items.filter((one) => one.showing === showing && !book.afterOpening.includes(one.item));
  return {
    name,
    of: new Map(
      shown.map(({ trial, item }) => {
        const marks = book.marks.get(item);
        const timeOf = (repetition: number): number | null =>
          (marks === undefined ? tops.get(trial)?.[repetition - 1] : marks.get(repetition)) ?? null;
        const repetitions = [...(book.verdicts.get(item) ?? [])].map(([repetition, verdict]) => ({
          repetition,
          atS: timeOf(repetition),
          verdict,
        }));
        const count = book.counts.get(item) ?? null;
        const isWhole = marks !== undefined && count !== null;
        return [trial, { count, asShown: marks === undefined, isWhole, repetitions }];
      }),
    ),
  };
}
