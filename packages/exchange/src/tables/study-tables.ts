import { effortRow, pullRow } from '@surae/analysis';
import {
  CALIBRATION_COLUMNS,
  type Column,
  EFFORT_COLUMNS,
  HOP_COLUMNS,
  HOP_SERIES_COLUMNS,
  PERSON_COLUMNS,
  PRACTICE_COLUMNS,
  PULL_COLUMNS,
  REACH_COLUMNS,
  RECOUNT_COLUMNS,
  REPETITION_COLUMNS,
  REPETITION_HAND_COLUMNS,
  SET_COLUMNS,
  SET_HAND_COLUMNS,
  TOTAL_COLUMNS,
  TRIAL_FRAME_COLUMNS,
  TRIAL_KEY_COLUMNS,
  VISIT_COLUMNS,
} from '@surae/shared';
import { repetitionRows } from '../record/study-by-hand.ts';
import type { Study, StudyPractice, StudyReach, StudyResult, StudyTotal, StudyTrial } from '../study.ts';
import { columnCells } from './column-cells.ts';
import { type Cell, type Table, tableOf } from './table.ts';

function under(prefix: string, columns: readonly Column[]): Column[] {
  return columns.map((column) => ({ ...column, key: `${prefix}.${column.key}` }));
}

const REPETITIONS: readonly Column[] = [...REPETITION_COLUMNS, ...REPETITION_HAND_COLUMNS];

/** Columns of a trial by its test; those of the other tests are empty. */
const OF_TEST = {
  'heel-raise': under('raises', [...SET_COLUMNS, ...SET_HAND_COLUMNS]),
  isometric: under('pushes', PULL_COLUMNS),
  'hop-series': under('hops', HOP_SERIES_COLUMNS),
} as const satisfies Record<StudyResult['test'], readonly Column[]>;

/** The columns of the table of trials: what is told of each, then what each test came to. */
export const TRIAL_COLUMNS: readonly Column[] = [
  ...TRIAL_FRAME_COLUMNS,
  ...OF_TEST['heel-raise'],
  ...OF_TEST.isometric,
  ...OF_TEST['hop-series'],
];

function figuresOf(result: StudyResult): object {
  switch (result.test) {
    case 'heel-raise':
      return { ...result.report, byHand: result.byHand ?? null };
    case 'isometric':
      return pullRow(result.report);
    case 'hop-series':
      return result.report;
  }
}

function trialCells(trial: StudyTrial): Cell[] {
  const { result } = trial;
  const tests = Object.entries(OF_TEST).flatMap(([test, columns]) =>
    result?.test === test ? columnCells(columns, figuresOf(result)) : columns.map(() => null),
  );
  return [...columnCells(TRIAL_FRAME_COLUMNS, trial), ...tests];
}

/** Rows of one test's parts, each after the trial that it is of. */
function partRows(trials: readonly StudyTrial[], cellsOf: (result: StudyResult) => Cell[][]): Cell[][] {
  return trials.flatMap((trial) => {
    const before = columnCells(TRIAL_KEY_COLUMNS, trial);
    return trial.result === null ? [] : cellsOf(trial.result).map((cells) => [...before, ...cells]);
  });
}

/** Sets that were counted again, each beside its trial; no table where none was. */
function recountTable(trials: readonly StudyTrial[]): Table[] {
  const rows = trials.flatMap((trial) =>
    (trial.recounts ?? []).map((one) => [
      ...columnCells(TRIAL_KEY_COLUMNS, trial),
      ...columnCells(RECOUNT_COLUMNS, one),
      ...columnCells(OF_TEST['heel-raise'], one.result.report),
    ]),
  );
  const columns = [...TRIAL_KEY_COLUMNS, ...RECOUNT_COLUMNS, ...OF_TEST['heel-raise']];
  return rows.length === 0
    ? []
    : [tableOf({ name: 'recounts', title: 'Heel raises counted again by other criteria', columns, rows })];
}

/** Totals of questionnaires; no table where there are none. */
function totalTable(totals: readonly StudyTotal[]): Table[] {
  const columns = TOTAL_COLUMNS;
  const rows = totals.map((one) => columnCells(columns, one));
  return rows.length === 0 ? [] : [tableOf({ name: 'totals', title: 'Totals of questionnaires', columns, rows })];
}

/** Knee-to-wall tests; no table where there are none. */
function reachTable(reaches: readonly StudyReach[]): Table[] {
  const columns = REACH_COLUMNS;
  const rows = reaches.map((one) => columnCells(columns, one));
  return rows.length === 0 ? [] : [tableOf({ name: 'knee-to-wall', title: 'Knee-to-wall tests', columns, rows })];
}

/** Raises for practice, one row each; one of which no height is known has a row without. No table where there are none. */
function practiceTable(practice: readonly StudyPractice[]): Table[] {
  const columns = PRACTICE_COLUMNS;
  const rows = practice.flatMap(({ raises, ...of }) =>
    (raises.length === 0 ? [{}] : raises.map((raise, at) => ({ raise: at + 1, ...raise }))).map((raise) =>
      columnCells(columns, { ...of, ...raise }),
    ),
  );
  return rows.length === 0 ? [] : [tableOf({ name: 'practice', title: 'Raises for practice', columns, rows })];
}

/** People, visits and trials, and the repetitions, efforts and hops of the trials, each under its one list of columns. */
export function studyTables({ people, visits, trials, totals = [], reaches = [], practice = [] }: Study): Table[] {
  const rows = (columns: readonly Column[], sources: readonly object[]): Cell[][] =>
    sources.map((source) => columnCells(columns, source));
  const parts = (
    name: string,
    title: string,
    columns: readonly Column[],
    cells: Parameters<typeof partRows>[1],
  ): Table => tableOf({ name, title, columns: [...TRIAL_KEY_COLUMNS, ...columns], rows: partRows(trials, cells) });
  return [
    tableOf({ name: 'people', title: 'People', columns: PERSON_COLUMNS, rows: rows(PERSON_COLUMNS, people) }),
    tableOf({ name: 'visits', title: 'Visits', columns: VISIT_COLUMNS, rows: rows(VISIT_COLUMNS, visits) }),
    tableOf({ name: 'trials', title: 'Trials', columns: TRIAL_COLUMNS, rows: trials.map(trialCells) }),
    parts('repetitions', 'Repetitions of heel raises', REPETITIONS, (result) =>
      result.test === 'heel-raise' ? rows(REPETITIONS, repetitionRows(result.report.repetitions, result.byHand)) : [],
    ),
    parts('efforts', 'Isometric efforts', [...EFFORT_COLUMNS, ...CALIBRATION_COLUMNS], (result) => {
      if (result.test !== 'isometric') return [];
      const calibration = columnCells(CALIBRATION_COLUMNS, result.report);
      return result.report.efforts.map((effort) => [
        ...columnCells(EFFORT_COLUMNS, effortRow(effort, result.scoreWindowS)),
        ...calibration,
      ]);
    }),
    parts('hops', 'Hops', HOP_COLUMNS, (result) =>
      result.test === 'hop-series' ? rows(HOP_COLUMNS, result.report.hops) : [],
    ),
    ...recountTable(trials),
    ...totalTable(totals),
    ...reachTable(reaches),
    ...practiceTable(practice),
  ];
}
