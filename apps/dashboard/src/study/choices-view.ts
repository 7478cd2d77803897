import { STUDY_RESULT_WORDS } from '@surae/shared';
import {
  type AnalysisResult,
  type ChoiceValue,
  choicesOf,
  type Multiverse,
  type OutcomeShift,
  type SingleChange,
  type StudyFile,
  valueWords,
} from '@surae/study';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { estimateFigures, saidWords } from './arm-words.ts';

/** A row of the table of single changes. */
export interface SingleRow {
  readonly choice: string;
  readonly estimate: string;
  readonly says: string;
  readonly analyses: string;
}

/** The sentence about all analyses, and the lines below it. */
export function choicesLines(
  study: StudyFile,
  found: Multiverse,
): { readonly sentence: string; readonly lines: string[] } {
  const words = STUDY_RESULT_WORDS;
  const { changed, compared, results } = found;
  const all = results.length;
  if (all === 1) return { sentence: words['one-way'].text, lines: [] };
  const sentence =
    changed === null
      ? fill(words['declared-nothing'], { compared, all })
      : fill(words['changed-line'], { changed, compared });
  const apart = all === compared ? [] : [fill(words.apart, { count: all - compared })];
  return { sentence, lines: [...apart, ...strongestLines(study, found)] };
}

function declaredOf(study: StudyFile, parameter: string): string {
  return valueWords(choicesOf(study).find((one) => one.parameter === parameter)!.values[0]!);
}

function strongestLines(study: StudyFile, { strongest, changed }: Multiverse): string[] {
  const words = STUDY_RESULT_WORDS;
  if (changed === null) return [];
  if (strongest === null) return [words['none-moves'].text];
  const { parameter, value, shiftInErrors, result } = strongest;
  const line = fill(words.strongest, {
    parameter,
    value: valueWords(value),
    declared: declaredOf(study, parameter),
    shift: decimal(Math.abs(shiftInErrors!), 1),
  });
  return [`${line} ${words[result.changes === true ? 'strongest-else' : 'strongest-same'].text}`];
}

function resultWords({ analysis, comparison }: AnalysisResult): Pick<SingleRow, 'estimate' | 'says'> {
  const { result } = comparison;
  const words = STUDY_RESULT_WORDS;
  if (result.kind === 'not-compared') {
    return { estimate: '', says: fill(words[result.reason], { found: result.found }) };
  }
  return {
    estimate: fill(words['with-interval'], estimateFigures(result)),
    says: saidWords(result, analysis.study.comparison),
  };
}

/** The declared analysis and each choice made otherwise alone. */
export function singleRows(study: StudyFile, { declared, singles }: Multiverse): SingleRow[] {
  const words = STUDY_RESULT_WORDS;
  const row = ({ parameter, value, result, withValue }: SingleChange): SingleRow => ({
    choice: fill(words.instead, { parameter, value: valueWords(value), declared: declaredOf(study, parameter) }),
    ...resultWords(result),
    analyses: fill(words['of-analyses'], withValue),
  });
  return [{ choice: words['as-declared'].text, ...resultWords(declared), analyses: '' }, ...singles.map(row)];
}

/** Something that trials are judged by, with its declared values, the registered one first. */
export interface BenchChoice {
  readonly parameter: string;
  readonly values: readonly ChoiceValue[];
}

/** What can be moved on the bench: choices of how recordings are assessed, and none of how people are compared. */
export function benchChoices(study: StudyFile): BenchChoice[] {
  return choicesOf(study).filter(({ parameter }) => /^(?:protocol|settings)\./.test(parameter));
}

/** The shift of the way that was chosen; choices that were not made stay registered. */
export function chosenShift(
  { results, declared }: Multiverse,
  shifts: readonly OutcomeShift[],
  chosen: ReadonlyMap<string, ChoiceValue>,
): OutcomeShift | undefined {
  const found = results.find(({ analysis: { choices } }) =>
    [...choices].every(([name, value]) => {
      const wished = chosen.has(name) ? chosen.get(name) : declared.analysis.choices.get(name);
      return value === wished;
    }),
  );
  return shifts.find(({ assessed }) => assessed === found?.analysis.assessment.key);
}

function spreadWords({ spread, trials }: OutcomeShift): string {
  const words = STUDY_RESULT_WORDS;
  if (spread === null) return words['no-value'].text;
  const { median, lower, upper, least, greatest } = spread;
  const isWhole = [median, lower, upper, least, greatest].every(Number.isInteger);
  const figure = (value: number): string => decimal(value, isWhole ? 0 : 1);
  return fill(words['median-line'], { median: figure(median), lower: figure(lower), upper: figure(upper), trials });
}

/** How the outcome of all trials moves from the registered way to the chosen one. */
export function benchLines(registered: OutcomeShift, chosen: OutcomeShift): string[] {
  const words = STUDY_RESULT_WORDS;
  const first = fill(words['registered-line'], { spread: spreadWords(registered) });
  if (chosen.isDeclared) return [first, words['is-registered'].text];
  const { both, higher, lower, gained, lost } = chosen;
  return [
    first,
    fill(words['chosen-line'], { spread: spreadWords(chosen) }),
    fill(words['moved-line'], { moved: higher + lower, both, up: higher, down: lower }),
    ...(lost === 0 ? [] : [fill(words['lost-line'], { count: lost })]),
    ...(gained === 0 ? [] : [fill(words['gained-line'], { count: gained })]),
  ];
}
