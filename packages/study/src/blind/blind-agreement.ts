import { agreementDefaults, agreementOf, type Bounds, cohenKappa, type Limits } from '@surae/analysis';
import type { BlindSettings } from './blind-defaults.ts';
import type { BlindVerdict } from './blind-step.ts';
import { type PairOfLists, pairedLists } from './paired-lists.ts';
import type { AutomaticCount, OpenedRater } from './told-counts.ts';

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
  readonly kind: PairOfLists['kind'];
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
  /** bias and limits of agreement, first less second; null of too few recordings, and where all differences are the same */
  readonly limits: Limits | null;
  /** repetitions with a verdict from both */
  readonly repetitions: number;
  /** repetitions that one of the two alone saw: the other's list is whole and has none there */
  readonly firstAlone: number;
  readonly secondAlone: number;
  /** Cohen's kappa of their verdicts */
  readonly kappa: BlindFigure;
  /** share of verdicts that are the same; null without any */
  readonly observed: number | null;
}

const NOT_GIVEN = (reason: 'too-few' | 'all-alike'): BlindFigure => ({ kind: 'not-given', reason });

function figures(
  first: readonly number[],
  second: readonly number[],
  settings: BlindSettings,
): Pick<PairOfCounts, 'icc' | 'sem' | 'limits'> {
  if (first.length < settings.leastSets) return { icc: NOT_GIVEN('too-few'), sem: NOT_GIVEN('too-few'), limits: null };
  const { intraclass, error, pairs } = agreementOf(
    {
      subjects: first.map((_, at) => String(at)),
      raters: ['first', 'second'],
      values: first.map((count, at) => [count, second[at]!]),
    },
    { ...agreementDefaults, level: settings.level, scale: 'difference', counts: true },
  );
  const estimate = intraclass.find(({ form }) => form === 'ICC(2,1)')?.estimate;
  return {
    icc:
      estimate === undefined
        ? NOT_GIVEN('all-alike')
        : { kind: 'given', value: estimate.value, interval: estimate.interval ?? null },
    sem: error === undefined ? NOT_GIVEN('all-alike') : { kind: 'given', value: error.sem.value, interval: error.sem },
    limits: pairs[0]?.limits ?? null,
  };
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

function pairOf({ kind, first, second, trials }: PairOfLists, settings: BlindSettings): PairOfCounts {
  const counted = trials.flatMap(({ counts: [one, other] }) =>
    one === null || other === null ? [] : [[one, other] as const],
  );
  const judged = trials.flatMap(({ both }) => both.map(([one, other]) => [one.verdict, other.verdict] as const));
  const differences = counted.map(([one, other]) => one - other);
  const within = (reach: number): number => differences.filter((one) => Math.abs(one) <= reach).length;
  const ofCounts = figures(
    counted.map(([one]) => one),
    counted.map(([, other]) => other),
    settings,
  );
  const alike = judged.filter(([one, other]) => one === other).length;
  return {
    kind,
    first,
    second,
    sets: counted.length,
    same: within(0),
    withinOne: within(1),
    bias: counted.length === 0 ? null : differences.reduce((sum, one) => sum + one, 0) / counted.length,
    ...ofCounts,
    repetitions: judged.length,
    firstAlone: trials.reduce((sum, one) => sum + one.firstAlone.length, 0),
    secondAlone: trials.reduce((sum, one) => sum + one.secondAlone.length, 0),
    kappa: kappaOf(
      judged.map(([one]) => one),
      judged.map(([, other]) => other),
      settings,
    ),
    observed: judged.length === 0 ? null : alike / judged.length,
  };
}

/**
 * How far both sides of each pair agree. No figure is given of fewer recordings or repetitions than the settings ask for. The interval
 * of kappa takes repetitions as independent; those of one set are less than that, so it is rather too narrow. Kappa is of repetitions
 * that both saw: it knows nothing of those that one alone saw, which are counted beside it.
 */
export function agreementOfPairs(pairs: readonly PairOfLists[], settings: BlindSettings): PairOfCounts[] {
  return pairs.map((pair) => pairOf(pair, settings));
}

/** How far raters agree with themselves, with each other and with the automatic count. @throws as {@link pairedLists} */
export function blindAgreement(
  raters: readonly OpenedRater[],
  automatic: readonly AutomaticCount[],
  settings: BlindSettings,
): PairOfCounts[] {
  return agreementOfPairs(pairedLists(raters, automatic, settings), settings);
}
