import { outcomeColumn } from '../declared/outcome-columns.ts';
import type { StudyFile } from '../declared/study-document.ts';
import { column, listCell, type StudyCell, type StudyColumn, type StudyTable } from '../study-table.ts';
import { neededCells, type QualityRow } from './quality-rows.ts';

/** Columns that tell which trial a row is of: `file`, then whose, when, which leg and which group, each once. */
export function whichColumns(study: StudyFile): StudyColumn[] {
  const cells = new Set(['person', 'visit', 'side', ...neededCells(study)]);
  return [
    column('file', 'text', 'the recording, as the manifest names it'),
    ...[...cells].map((name) => column(name, 'text', 'as it stood in the manifest')),
  ];
}

/** The cells under {@link whichColumns}. */
export function whichCells(study: StudyFile, { trial, cells }: QualityRow['trial']): StudyCell[] {
  return whichColumns(study).map(({ key }, at) => (at === 0 ? trial : cells[key] || null));
}

/** The column of an outcome, with the unit and the words that it has everywhere. */
export function outcomeHeading(study: StudyFile, key: string): StudyColumn {
  const { unit, description, source } = outcomeColumn(study.test, key)!;
  return column(key, 'number', description, { unit, source });
}

/** The quality table: a row for each trial, with what is to be looked at and what was decided. */
export function qualityTable(study: StudyFile, rows: readonly QualityRow[]): StudyTable {
  const { primary } = study.outcomes;
  const words: readonly (readonly [StudyColumn, (row: QualityRow) => StudyCell])[] = [
    [column('status', 'text', 'include, exclude or to-decide'), (row) => row.status],
    [column('reasons', 'list', 'codes of the declared reasons to leave it out'), (row) => listCell(row.reasons)],
    [column('decided_by', 'text', 'rule or person; empty while nobody had to decide'), (row) => row.decidedBy],
    [column('flags', 'list', 'what is to be looked at'), (row) => listCell(row.flags)],
    [
      column('issues', 'list', 'codes of issues of the recording that are more than notes'),
      (row) => listCell(row.issues),
    ],
    [column('gap_s', 'number', 'time that gaps take together', { unit: 's' }), (row) => row.gapS],
    [column('withheld', 'list', 'codes of what was not given'), (row) => listCell(row.trial.withheld)],
    [
      column('usable', 'text', 'whether the trial may be interpreted: yes, no or cannot_tell'),
      (row) => row.trial.usable,
    ],
    [
      column('not_told', 'list', 'columns of the manifest that the comparison asks for'),
      (row) => listCell(row.notTold),
    ],
    [column('not_measured', 'list', 'outcomes of the study without a value'), (row) => listCell(row.notMeasured)],
    [outcomeHeading(study, primary), (row) => row.primary],
    [column('refusal', 'text', 'why the file was refused'), (row) => row.trial.refusal],
    [column('same_as', 'text', 'the trial before it with the same bytes'), (row) => row.trial.sameAs],
    [
      column('decision', 'text', 'what a person decided last: include, exclude or open'),
      (row) => row.decision?.decision ?? null,
    ],
    [column('decision_by', 'text', 'who decided'), (row) => row.decision?.by ?? null],
    [column('decision_at', 'text', 'when, as it was given'), (row) => row.decision?.at ?? null],
    [column('decision_why', 'text', 'why, in their words'), (row) => row.decision?.why ?? null],
    [column('sha256', 'text', 'SHA-256 of the bytes of the recording'), (row) => row.trial.sha256],
    [
      column('settings_hash', 'text', 'SHA-256 of all settings and of the protocol with its parameters'),
      (row) => row.trial.settingsHash,
    ],
  ];
  return {
    name: 'quality',
    title: 'Trials and whether they are taken',
    columns: [...whichColumns(study), ...words.map(([heading]) => heading)],
    rows: rows.map((row) => [...whichCells(study, row.trial), ...words.map(([, cellOf]) => cellOf(row))]),
  };
}
