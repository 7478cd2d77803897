import { choiceOf, declaredValue } from '../declared/declared-choice.ts';
import type { StudyFile } from '../declared/study-document.ts';
import { outcomeHeading, whichCells, whichColumns } from '../quality/quality-table.ts';
import type { TrialFacts } from '../quality/trial-facts.ts';
import { outcomeOf } from '../quality/trial-figures.ts';
import { column, type StudyCell, type StudyTable } from '../study-table.ts';
import { type Assessment, choicesOf, valueWords } from './analyses.ts';
import type { AnalysisResult, Multiverse } from './multiverse.ts';

function resultCells({ analysis, comparison, changes }: AnalysisResult): StudyCell[] {
  const { result } = comparison;
  const { scale } = analysis.study.comparison;
  if (result.kind === 'not-compared') {
    const why = `${result.reason}: ${result.found}`;
    return [scale, result.first, result.second, null, null, null, null, null, changes, why];
  }
  const { estimate, conclusion, first, second } = result;
  const { differs, greater } = conclusion;
  return [scale, first.n, second.n, estimate.value, estimate.low, estimate.high, differs, greater, changes, null];
}

const RESULT_COLUMNS = [
  column('scale', 'text', 'difference (unit of the outcome) or ratio'),
  column('first_people', 'number', 'people, or pairs, of the first'),
  column('second_people', 'number', 'people, or pairs, of the second'),
  column('estimate', 'number', 'first less second, or first over second'),
  column('low', 'number', 'lower bound of its interval'),
  column('high', 'number', 'upper bound of its interval'),
  column('differs', 'text', 'yes, no or cannot_tell'),
  column('greater', 'text', 'first or second, where they differ'),
  column(
    'changes',
    'flag',
    'whether it says something else than the declared one; empty where one of the two says nothing',
  ),
  column('not_compared', 'text', 'why nothing is said'),
] as const;

/** A row for each analysis, the declared one first: its choices and what it comes to. */
export function multiverseTable(study: StudyFile, { results }: Multiverse): StudyTable {
  const names = choicesOf(study).map(({ parameter }) => parameter);
  return {
    name: 'multiverse',
    title: 'The comparison under every choice that could have been made',
    columns: [
      column('analysis', 'text', 'a0001 is the declared one'),
      column('declared', 'flag', 'whether it is the declared one'),
      ...names.map((name) => column(`choice.${name}`, 'text', 'value of the choice; none is no limit')),
      ...RESULT_COLUMNS,
    ],
    rows: results.map((one) => [
      one.analysis.id,
      one.analysis.isDeclared,
      ...names.map((name) => valueWords(one.analysis.choices.get(name)!)),
      ...resultCells(one),
    ]),
  };
}

/** A row for each choice made otherwise alone, and how often analyses with it say something else. */
export function choicesTable(study: StudyFile, { singles }: Multiverse): StudyTable {
  return {
    name: 'choices',
    title: 'Each choice made otherwise alone',
    columns: [
      column('parameter', 'text', 'what was chosen'),
      column('declared_value', 'text', 'as it was declared'),
      column('value', 'text', 'in its place'),
      column('why', 'text', 'why it would have been as defensible, as declared'),
      ...RESULT_COLUMNS,
      column(
        'shift_in_standard_errors',
        'number',
        'how far the estimate moves, in standard errors of the declared one',
      ),
      column('analyses_compared', 'number', 'analyses with this value that say something'),
      column('analyses_changed', 'number', 'of them those that say something else than the declared one'),
    ],
    rows: singles.map(({ parameter, value, result, shiftInErrors, withValue }) => [
      parameter,
      valueWords(declaredValue(study, choiceOf(parameter)!)!),
      valueWords(value),
      study.choices.find((one) => one.parameter === parameter)!.why,
      ...resultCells(result),
      shiftInErrors,
      withValue.compared,
      withValue.changed,
    ]),
  };
}

/** The outcomes of every trial under every assessment: a row each. */
export function outcomesTable(
  study: StudyFile,
  assessments: readonly Assessment[],
  trialsOf: ReadonlyMap<string, readonly TrialFacts[]>,
): StudyTable {
  const keys = [study.outcomes.primary, ...study.outcomes.secondary];
  return {
    name: 'outcomes',
    title: 'Outcomes of each trial',
    columns: [
      column('assessed', 'text', 'as declared, or what differs'),
      ...whichColumns(study),
      ...keys.map((key) => outcomeHeading(study, key)),
      column('settings_hash', 'text', 'SHA-256 of all settings and of the protocol with its parameters'),
    ],
    rows: assessments.flatMap(({ key: assessed }) =>
      (trialsOf.get(assessed) ?? []).map((trial) => [
        assessed,
        ...whichCells(study, trial),
        ...keys.map((key) => outcomeOf(study.test, key, trial)),
        trial.settingsHash,
      ]),
    ),
  };
}
