import type { StudyFile } from '../declared/study-document.ts';
import { outcomeHeading } from '../quality/quality-table.ts';
import { column, type StudyCell, type StudyColumn, type StudyTable } from '../study-table.ts';
import type { ArmComparison } from './compare-arms.ts';

const WELCH = 'Welch (1947), Biometrika 34:28-35';
const STUDENT = 'Student (1908), Biometrika 6:1-25';
const WEIR = 'Weir (2005), J Strength Cond Res 19:231-240';

type Sourced = readonly (readonly [StudyColumn, StudyCell])[];

function estimateCells({ result }: ArmComparison, unit: string): Sourced {
  const one = result.kind === 'compared' ? result : null;
  const people = (which: 'first' | 'second'): number => (result.kind === 'compared' ? result[which].n : result[which]);
  const source = one?.method === 'paired' ? STUDENT : WELCH;
  const figure = (key: string, what: string, value: number | undefined, own = unit): Sourced[number] => [
    column(key, 'number', what, { unit: own, source }),
    value ?? null,
  ];
  return [
    [column('method', 'text', 'welch for independent people, paired for the same'), one?.method ?? null],
    figure('first_people', 'people, or pairs, of the first', people('first'), '1'),
    figure('second_people', 'people, or pairs, of the second', people('second'), '1'),
    figure('first_trials', 'trials of the first', one?.first.trials, '1'),
    figure('second_trials', 'trials of the second', one?.second.trials, '1'),
    figure('first_mean', 'mean of the first; of ratios the geometric mean', one?.first.mean),
    figure('first_sd', 'standard deviation; of ratios the factor of one', one?.first.sd),
    figure('second_mean', 'mean of the second', one?.second.mean),
    figure('second_sd', 'standard deviation of the second', one?.second.sd),
    figure('estimate', 'first less second, or first over second', one?.estimate.value),
    figure('low', 'lower bound of its interval', one?.estimate.low),
    figure('high', 'upper bound of its interval', one?.estimate.high),
    figure('df', 'degrees of freedom', one?.estimate.df, '1'),
    figure('t', 'value of t; of ratios on the scale of the logarithm', one?.estimate.t, '1'),
    figure('p', 'two-sided p of it; what is concluded rests on the interval', one?.estimate.p, '1'),
    [
      column('differs', 'text', 'yes, no or cannot_tell; no is said only within the margin'),
      one?.conclusion.differs ?? null,
    ],
    [column('greater', 'text', 'first or second, where they differ'), one?.conclusion.greater ?? null],
    [
      column('not_compared', 'text', 'why nothing is said'),
      result.kind === 'not-compared' ? `${result.reason}: ${result.found}` : null,
    ],
  ];
}

function errorCells({ error, result }: ArmComparison, isRatio: boolean): Sourced {
  const of = isRatio ? 'natural logarithm' : 'unit of the outcome';
  const figure = (key: string, what: string, value: number | undefined): Sourced[number] => [
    column(key, 'number', what, { source: WEIR }),
    value ?? null,
  ];
  const value = result.kind === 'compared' ? result.estimate.value : undefined;
  const inErrors = error && value !== undefined ? (isRatio ? Math.log(value) : value) / error.sem.value : undefined;
  return [
    figure(
      'sem',
      `standard error of one measurement from the repeats of this study, ${of}; empty where it has none`,
      error?.sem.value,
    ),
    figure('sem_low', 'lower bound of its interval', error?.sem.low),
    figure('sem_high', 'upper bound of its interval', error?.sem.high),
    figure('sem_df', 'its degrees of freedom: each is worth one pair of repeats', error?.df),
    figure('estimate_in_sems', 'the estimate in multiples of sem', inErrors),
  ];
}

/** The comparison of the primary outcome as a table of one row. */
export function comparisonTable(study: StudyFile, comparison: ArmComparison): StudyTable {
  const { of, first, second, scale, perPerson, level, margin } = study.comparison;
  const { unit } = outcomeHeading(study, study.outcomes.primary);
  const isRatio = scale === 'ratio';
  const said: Sourced = [
    [column('outcome', 'text', 'column of the primary outcome'), study.outcomes.primary],
    [column('of', 'text', 'groups, visits or sides'), of],
    [column('first', 'text', 'what the first is'), first],
    [column('second', 'text', 'what the second is'), second],
    [column('scale', 'text', 'difference or ratio'), scale],
    [column('per_person', 'text', 'how several trials of one person became one value'), perPerson],
    [column('level', 'number', 'of the interval'), level],
    [column('margin', 'number', 'below which a difference does not matter; empty where none was declared'), margin],
    [column('unit', 'text', 'UCUM code of the unit of means and estimate; 1 for ratios'), isRatio ? '1' : unit],
    ...estimateCells(comparison, isRatio ? '1' : unit),
    [column('unpaired', 'list', 'people of whom one of the two is missing'), comparison.unpaired.join('; ') || null],
    ...errorCells(comparison, isRatio),
  ];
  return {
    name: 'groups',
    title: 'The primary outcome compared',
    columns: said.map(([heading]) => heading),
    rows: [said.map(([, cell]) => cell)],
  };
}

/** One row for each person and each of the two, with the value that was compared and the trials it came of. */
export function peopleTable(study: StudyFile, { people }: ArmComparison): StudyTable {
  const { comparison, outcomes } = study;
  return {
    name: 'people',
    title: 'The value of each person that was compared',
    columns: [
      column('person', 'text', 'as it stood in the manifest'),
      column('of', 'text', 'which of the two'),
      outcomeHeading(study, outcomes.primary),
      column('files', 'list', 'the recordings that it came of'),
    ],
    rows: people.map(({ person, arm, value, trials }) => [person, comparison[arm], value, trials.join('; ')]),
  };
}
