import { type Cell, columnCells } from '@surae/exchange';
import { REPETITION_COLUMNS, SET_COLUMNS } from '@surae/shared';
import { issueRows, type Outcome } from '@surae/study';
import { type FrameColumn, ORIGIN_COLUMNS, REASON_COLUMN, TRIAL_COLUMNS } from './frame-columns.ts';
import { hopRows } from './hop-tables.ts';
import { issueCells } from './issue-rows.ts';
import { pullRows } from './pull-tables.ts';
import type { Rows } from './table-shape.ts';

const framed = (outcome: Outcome, columns: readonly FrameColumn[]): Cell[] =>
  columns.map(({ value }) => value(outcome));

/** The cells that stand before the figures in every table: the recording, and what the manifest says of it. */
export function trialCells(outcome: Outcome, carried: readonly string[]): Cell[] {
  const { item } = outcome;
  const cells = carried.map((name) => item.carried[name] ?? '');
  return [item.file, ...cells, ...framed(outcome, TRIAL_COLUMNS)];
}

/** The rows that a recording has in each table of results. */
export function outcomeRows(outcome: Outcome, carried: readonly string[]): Rows {
  const trial = trialCells(outcome, carried);
  if (outcome.status === 'refused') {
    return { 'refused.csv': [[...trial, ...framed(outcome, [ORIGIN_COLUMNS[0]!, REASON_COLUMN])]] };
  }
  const issues = { 'issues.csv': issueRows(outcome).map((issue) => [...trial, ...issueCells(issue)]) };
  const origin = framed(outcome, ORIGIN_COLUMNS);
  switch (outcome.test) {
    case 'heel-raise': {
      const { report } = outcome;
      return {
        'repetitions.csv': report.repetitions.map((one) => [...trial, ...columnCells(REPETITION_COLUMNS, one)]),
        'sets.csv': [[...trial, ...origin, ...columnCells(SET_COLUMNS, report), report.withheld.join('; ')]],
        ...issues,
      };
    }
    case 'isometric':
      return { ...issues, ...pullRows(outcome, trial, origin) };
    case 'hop-series':
      return { ...issues, ...hopRows(outcome) };
  }
}
