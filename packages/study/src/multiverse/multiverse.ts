import { type ArmComparison, compareArms } from '../compare/compare-arms.ts';
import type { ChoiceValue } from '../declared/declared-choice.ts';
import type { StudyFile } from '../declared/study-document.ts';
import { StudyError } from '../errors.ts';
import type { Decision } from '../quality/decisions.ts';
import { qualityRows } from '../quality/quality-rows.ts';
import type { TrialFacts } from '../quality/trial-facts.ts';
import { type Analysis, choicesOf } from './analyses.ts';

/** What one analysis comes to. */
export interface AnalysisResult {
  readonly analysis: Analysis;
  readonly comparison: ArmComparison;
  /** whether it says something else than the declared one; null where one of the two says nothing */
  readonly changes: boolean | null;
}

/** The declared analysis with one choice made otherwise, and all others as declared. */
export interface SingleChange {
  readonly parameter: string;
  readonly value: ChoiceValue;
  readonly result: AnalysisResult;
  /** how far the estimate moves, in standard errors of the declared one; null on another scale, or where nothing is compared */
  readonly shiftInErrors: number | null;
  /** of all analyses with this value that say something: how many, and how many of them say something else than the declared one */
  readonly withValue: { readonly compared: number; readonly changed: number };
}

/** How far what a study says hangs on choices that could have been made otherwise. */
export interface Multiverse {
  /** the declared analysis first */
  readonly results: readonly AnalysisResult[];
  readonly declared: AnalysisResult;
  /** analyses that say something */
  readonly compared: number;
  /** of them those that say something else than the declared one; null where that says nothing itself */
  readonly changed: number | null;
  readonly singles: readonly SingleChange[];
  /** the single change that moves the estimate most; null where none moves it, or none can be held against it */
  readonly strongest: SingleChange | null;
}

function isSame({ result: one }: ArmComparison, { result: other }: ArmComparison): boolean | null {
  if (one.kind !== 'compared' || other.kind !== 'compared') return null;
  const [a, b] = [one.conclusion, other.conclusion];
  return a.differs === b.differs && a.greater === b.greater;
}

function shiftOf(one: AnalysisResult, declared: AnalysisResult): number | null {
  const [a, b] = [one.comparison.result, declared.comparison.result];
  const { scale } = declared.analysis.study.comparison;
  if (a.kind !== 'compared' || b.kind !== 'compared' || one.analysis.study.comparison.scale !== scale) return null;
  const on = (value: number): number => (scale === 'ratio' ? Math.log(value) : value);
  return (on(a.estimate.value) - on(b.estimate.value)) / b.estimate.standardError;
}

function singlesOf(study: StudyFile, results: readonly AnalysisResult[], declared: AnalysisResult): SingleChange[] {
  return choicesOf(study).flatMap(({ parameter, values }) =>
    values.slice(1).map((value): SingleChange => {
      const having = results.filter(({ analysis }) => analysis.choices.get(parameter) === value);
      const alone = having.find(({ analysis }) =>
        [...analysis.choices].every(([name, one]) => name === parameter || one === declared.analysis.choices.get(name)),
      )!;
      const compared = having.filter(({ comparison }) => comparison.result.kind === 'compared').length;
      const changed = having.filter(({ changes }) => changes === true).length;
      return {
        parameter,
        value,
        result: alone,
        shiftInErrors: shiftOf(alone, declared),
        withValue: { compared, changed },
      };
    }),
  );
}

/**
 * The primary comparison under every analysis: how many of how many say something else than the declared one, and which single choice
 * moves the estimate most. An analysis that can say nothing is no change; it is counted apart.
 *
 * @param analyses - of the study, the declared one first
 * @param trialsOf - the trials as one assessment finds them, by its key
 * @param decisions - that stand about trials
 * @throws {@link StudyError} `out-of-range` without the trials of an assessment
 *
 * Source: the idea of going through all defensible analyses: Steegen et al. (2016), Perspect Psychol Sci 11:702-712 (from memory, not
 * checked against the paper)
 */
export function multiverse(
  study: StudyFile,
  analyses: readonly Analysis[],
  trialsOf: ReadonlyMap<string, readonly TrialFacts[]>,
  decisions: ReadonlyMap<string, Decision>,
): Multiverse {
  const compared = analyses.map((analysis) => {
    const trials = trialsOf.get(analysis.assessment.key);
    if (trials === undefined) {
      const expected = `the trials as assessed ${analysis.assessment.key}`;
      throw new StudyError('out-of-range', { path: analysis.id, expected, actual: 'none' });
    }
    const rows = qualityRows(analysis.study, trials, decisions, analysis.notApplied);
    return { analysis, comparison: compareArms(analysis.study, rows) };
  });
  const first = compared[0]!;
  const results = compared.map((one): AnalysisResult => {
    const same = isSame(one.comparison, first.comparison);
    return { ...one, changes: same === null ? null : !same };
  });
  const declared = results[0]!;
  const singles = singlesOf(study, results, declared);
  const moving = singles.filter(({ shiftInErrors }) => shiftInErrors !== null && shiftInErrors !== 0);
  const size = ({ shiftInErrors }: SingleChange): number => Math.abs(shiftInErrors!);
  return {
    results,
    declared,
    compared: results.filter(({ comparison }) => comparison.result.kind === 'compared').length,
    changed:
      declared.comparison.result.kind === 'compared' ? results.filter(({ changes }) => changes === true).length : null,
    singles,
    strongest: moving.reduce<SingleChange | null>((most, one) => (most && size(most) >= size(one) ? most : one), null),
  };
}
