import { StudyError } from '../errors.ts';
import type { BlindSettings } from './blind-defaults.ts';
import { type MatchedRepetitions, matchedRepetitions } from './matched-repetitions.ts';
import {
  type AutomaticCount,
  type OpenedRater,
  type ToldCounts,
  type ToldTrial,
  toldByMachine,
  toldByRater,
} from './told-counts.ts';

/** One recording as both sides of a pair have it. */
export interface PairedTrial extends MatchedRepetitions {
  readonly trial: string;
  readonly counts: readonly [first: number | null, second: number | null];
}

/** Two sides and what each says of the recordings that both have. */
export interface PairOfLists {
  readonly kind: 'within-rater' | 'between-raters' | 'with-automatic';
  readonly first: string;
  readonly second: string;
  /** in the order of their names */
  readonly trials: readonly PairedTrial[];
}

function listsOf(
  kind: PairOfLists['kind'],
  first: ToldCounts,
  second: ToldCounts,
  { sameWithinS }: BlindSettings,
): PairOfLists {
  const trials = [...first.of.keys()].filter((trial) => second.of.has(trial)).sort();
  const paired = trials.map((trial): PairedTrial => {
    const [one, other]: [ToldTrial, ToldTrial] = [first.of.get(trial)!, second.of.get(trial)!];
    return { trial, counts: [one.count, other.count], ...matchedRepetitions(one, other, sameWithinS) };
  });
  return { kind, first: first.name, second: second.name, trials: paired };
}

/**
 * Nothing; refuses raters before all have locked and the names are opened.
 *
 * @throws {@link StudyError} `out-of-turn` while the verdicts of one are not locked, or the names not opened
 */
export function requireOpened(raters: readonly OpenedRater[]): void {
  for (const { book } of raters) {
    if (book.lock !== null && book.isOpened) continue;
    const actual = book.lock === null ? 'verdicts that are not locked' : 'names that are not opened';
    throw new StudyError('out-of-turn', { path: book.rater, expected: 'locked verdicts and opened names', actual });
  }
}

/**
 * Every pair that is held against each other: raters with themselves (recordings shown twice), with each other and with the automatic
 * count (first showings). What was said after an early opening is left out.
 *
 * @throws {@link StudyError} `out-of-turn` while the verdicts of a rater are not locked, or the names not opened
 */
export function pairedLists(
  raters: readonly OpenedRater[],
  automatic: readonly AutomaticCount[],
  settings: BlindSettings,
): PairOfLists[] {
  requireOpened(raters);
  const told = (rater: OpenedRater, showing: 1 | 2, name: string): ToldCounts =>
    toldByRater(rater, showing, name, automatic);
  const first = raters.map((rater) => told(rater, 1, rater.book.rater));
  const machine = toldByMachine(automatic);
  return [
    ...raters.map((rater, at) =>
      listsOf('within-rater', first[at]!, told(rater, 2, `${rater.book.rater}, second showing`), settings),
    ),
    ...first.flatMap((one, at) => first.slice(at + 1).map((other) => listsOf('between-raters', one, other, settings))),
    ...first.map((one) => listsOf('with-automatic', one, machine, settings)),
  ];
}
