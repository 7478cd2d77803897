import { RECOUNT_STUDY_WORDS } from '@surae/shared';
import { type BlindFigure, blindDefaults, type PairOfCounts } from '@surae/study';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';

/** Who the two of a pair are, in words. */
export function namesOf({ kind, first, second }: Pick<PairOfCounts, 'kind' | 'first' | 'second'>): {
  readonly title: string;
  readonly first: string;
  readonly second: string;
} {
  const words = RECOUNT_STUDY_WORDS;
  const title = fill(words[`pair-${kind}`], { first, second });
  switch (kind) {
    case 'within-rater':
      return { title, first: words['first-time'].text, second: words['second-time'].text };
    case 'between-raters':
      return { title, first, second };
    case 'with-automatic':
      return { title, first, second: words.machine.text };
  }
}

function interval(figure: Extract<BlindFigure, { kind: 'given' }>, decimals: number): string {
  const words = RECOUNT_STUDY_WORDS;
  if (figure.interval === null) return words['no-interval'].text;
  const { low, high } = figure.interval;
  return fill(words.interval, { low: decimal(low, decimals), high: decimal(high, decimals) });
}

function biasLine(pair: PairOfCounts): string[] {
  const words = RECOUNT_STUDY_WORDS;
  const { bias, kind, first } = pair;
  if (bias === null) return [];
  const value = decimal(Math.abs(bias), 2);
  if (Math.abs(bias) < 0.005) return [words['bias-none'].text];
  // within a rater the first time stands less the second
  if (kind === 'within-rater') return [fill(words[bias < 0 ? 'bias-second-more' : 'bias-second-less'], { value })];
  return [fill(words[bias > 0 ? 'bias-more' : 'bias-less'], { first, value })];
}

function countLines(pair: PairOfCounts): string[] {
  const words = RECOUNT_STUDY_WORDS;
  const { sets, same, withinOne: within, icc, sem, limits } = pair;
  if (sets === 0) return [words['counts-none'].text];
  const bounds =
    limits === null
      ? sets < blindDefaults.leastSets
        ? []
        : [words['limits-none'].text]
      : [fill(words.limits, { low: decimal(limits.lower.value, 1), high: decimal(limits.upper.value, 1) })];
  const iccLine =
    icc.kind === 'given'
      ? fill(words.icc, { value: decimal(icc.value, 2), interval: interval(icc, 2) })
      : fill(words[`icc-${icc.reason}`], { least: blindDefaults.leastSets });
  const semLine =
    sem.kind === 'given'
      ? [fill(words.sem, { value: decimal(sem.value, 2), interval: interval(sem, 2) })]
      : sem.reason === 'all-alike'
        ? [words['sem-none'].text]
        : [];
  return [fill(words['counts-of'], { sets, same, within }), ...biasLine(pair), ...bounds, iccLine, ...semLine];
}

/** What is said of a pair, a sentence for each figure. */
export function agreementLines(pair: PairOfCounts): string[] {
  const words = RECOUNT_STUDY_WORDS;
  const { kappa, repetitions, firstAlone, secondAlone } = pair;
  const { first, second } = namesOf(pair);
  const kappaLine =
    kappa.kind === 'given'
      ? [
          fill(words.kappa, { value: decimal(kappa.value, 2), interval: interval(kappa, 2), repetitions }),
          ...(kappa.interval === null ? [] : [words['kappa-note'].text]),
        ]
      : [fill(words[`kappa-${kappa.reason}`], { least: blindDefaults.leastRepetitions })];
  const alone = fill(words[pair.kind === 'within-rater' ? 'alone-within' : 'alone'], {
    first,
    second,
    firstAlone,
    secondAlone,
  });
  return [...countLines(pair), ...kappaLine, ...(firstAlone + secondAlone === 0 ? [] : [alone])];
}
