import { agreementDefaults, agreementOf, type Bounds, cohenKappa } from '@surae/analysis';
import { StudyError } from '../errors.ts';
import type { BlindSettings } from './blind-defaults.ts';
import type { BlindKey } from './blinded-order.ts';
import type { BlindVerdict, VerdictBook } from './verdict-book.ts';

/** What the automatic count came to. */
export interface AutomaticCount {
  readonly trial: string;
  readonly count: number;
  /** of each repetition, as raters were shown them, from the first on */
  readonly verdicts: readonly BlindVerdict[];
}

/** A rater whose verdicts are locked and whose names are opened. */
export interface OpenedRater {
  readonly key: BlindKey;
  readonly book: VerdictBook;
}

/** One figure with its interval, or why there is none. */
export type BlindFigure =
  | {
      readonly kind: 'given';
      readonly value: number;
      /** null where the formula gives no width */
      readonly interval: Bounds | null;
    }
  | { readonly kind: 'not-given'; readonly reason: 'too-few' | 'all-alike' };

/** How far two lists of counts and verdicts of the same recordings agree. */
export interface PairOfCounts {
  readonly kind: 'within-rater' | 'between-raters' | 'with-automatic';
  readonly first: string;
  readonly second: string;
  /** recordings with a count from both */
  readonly sets: number;
  /** counts that are the same, and that differ by one at most */
  readonly same: number;
  readonly withinOne: number;
  /** mean of the first less the second; null without any */
  readonly bias: number | null;
  /** ICC(2,1): absolute agreement, one count */
  readonly icc: BlindFigure;
  /** standard error of measurement of one count */
  readonly sem: BlindFigure;
  /** repetitions with a verdict from both */
  readonly repetitions: number;
  /** Cohen's kappa of their verdicts */
  readonly kappa: BlindFigure;
  /** share of verdicts that are the same; null without any */
  readonly observed: number | null;
}

/** What one side of a pair says of each recording. */
interface Told {
  readonly name: string;
  readonly of: ReadonlyMap<
    string,
    { readonly count: number | null; readonly verdicts: ReadonlyMap<number, BlindVerdict> }
  >;
}

const NOT_GIVEN = (reason: 'too-few' | 'all-alike'): BlindFigure => ({ kind: 'not-given', reason });

function figures(
  first: readonly number[],
  second: readonly number[],
  settings: BlindSettings,
): [BlindFigure, BlindFigure] {
  if (first.length < settings.leastSets) return [NOT_GIVEN('too-few'), NOT_GIVEN('too-few')];
  const { intraclass, error } = agreementOf(
    {
      subjects: first.map((_, at) => String(at)),
      raters: ['first', 'second'],
      values: first.map((count, at) => [count, second[at]!]),
    },
    { ...agreementDefaults, level: settings.level, scale: 'difference', counts: true },
  );
  const estimate = intraclass.find(({ form }) => form === 'ICC(2,1)')?.estimate;
  return [
    estimate === undefined
      ? NOT_GIVEN('all-alike')
      : { kind: 'given', value: estimate.value, interval: estimate.interval ?? null },
    error === undefined ? NOT_GIVEN('all-alike') : { kind: 'given', value: error.sem.value, interval: error.sem },
  ];
}

function kappaOf(
  first: readonly BlindVerdict[],
  second: readonly BlindVerdict[],
  { leastRepetitions, level }: BlindSettings,
): BlindFigure {
  if (first.length < leastRepetitions) return NOT_GIVEN('too-few');
  const { kappa, interval } = cohenKappa(first, second, level);
  return kappa === undefined ? NOT_GIVEN('all-alike') : { kind: 'given', value: kappa, interval: interval ?? null };
}

function pairOf(kind: PairOfCounts['kind'], first: Told, second: Told, settings: BlindSettings): PairOfCounts {
  const trials = [...first.of.keys()].filter((trial) => second.of.has(trial)).sort();
  const counted = trials.flatMap((trial) => {
    const [one, other] = [first.of.get(trial)!.count, second.of.get(trial)!.count];
    return one === null || other === null ? [] : [[one, other] as const];
  });
  const judged = trials.flatMap((trial) => {
    const others = second.of.get(trial)!.verdicts;
    return [...first.of.get(trial)!.verdicts].flatMap(([repetition, verdict]) => {
      const other = others.get(repetition);
      return other === undefined ? [] : [[verdict, other] as const];
    });
  });
  const differences = counted.map(([one, other]) => one - other);
  const within = (reach: number): number => differences.filter((one) => Math.abs(one) <= reach).length;
  const [icc, sem] = figures(
    counted.map(([one]) => one),
    counted.map(([, other]) => other),
    settings,
  );
  const alike = judged.filter(([one, other]) => one === other).length;
  return {
    kind,
    first: first.name,
    second: second.name,
    sets: counted.length,
    same: within(0),
    withinOne: within(1),
    bias: counted.length === 0 ? null : differences.reduce((sum, one) => sum + one, 0) / counted.length,
    icc,
    sem,
    repetitions: judged.length,
    kappa: kappaOf(
      judged.map(([one]) => one),
      judged.map(([, other]) => other),
      settings,
    ),
    observed: judged.length === 0 ? null : alike / judged.length,
  };
}

function toldBy({ key, book }: OpenedRater, showing: 1 | 2, name: string): Told {
  const shown = key.items.filter((one) => one.showing === showing && !book.afterOpening.includes(one.item));
  return {
    name,
    of: new Map(
      shown.map(({ trial, item }) => [
        trial,
        { count: book.counts.get(item) ?? null, verdicts: book.verdicts.get(item) ?? new Map<number, BlindVerdict>() },
      ]),
    ),
  };
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
 * How far raters agree with themselves (recordings shown twice), with each other (first showings) and with the automatic count (first
 * showings). What was said after an early opening is left out. No figure is given of fewer recordings or repetitions than the settings
 * ask for. The interval of kappa takes repetitions as independent; those of one set are less than that, so it is rather too narrow.
 *
 * @throws {@link StudyError} `out-of-turn` while the verdicts of a rater are not locked, or the names not opened
 */
export function blindAgreement(
  raters: readonly OpenedRater[],
  automatic: readonly AutomaticCount[],
  settings: BlindSettings,
): PairOfCounts[] {
  requireOpened(raters);
  const first = raters.map((rater) => toldBy(rater, 1, rater.book.rater));
  const machine: Told = {
    name: 'automatic',
    of: new Map(
      automatic.map(({ trial, count, verdicts }) => [
        trial,
        { count, verdicts: new Map(verdicts.map((verdict, at) => [at + 1, verdict])) },
      ]),
    ),
  };
  return [
    ...raters.map((rater, at) =>
      pairOf('within-rater', first[at]!, toldBy(rater, 2, `${rater.book.rater}, second showing`), settings),
    ),
    ...first.flatMap((one, at) => first.slice(at + 1).map((other) => pairOf('between-raters', one, other, settings))),
    ...first.map((one) => pairOf('with-automatic', one, machine, settings)),
  ];
}
