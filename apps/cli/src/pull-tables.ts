import { effortRow, pullRow } from '@surae/analysis';
import { type Cell, columnCells } from '@surae/exchange';
import { CALIBRATION_COLUMNS, EFFORT_COLUMNS, PULL_COLUMNS } from '@surae/shared';
import type { AssessedPulls } from './assess-pull-file.ts';
import type { WholeTable } from './comparison-tables.ts';
import { FILE_COLUMN, type FrameColumn, ORIGIN_COLUMNS, TRIAL_COLUMNS } from './frame-columns.ts';

/** Names of the tables of isometric tests, in the order in which they are named to the user. */
export const PULL_TABLES = ['efforts.csv', 'pulls.csv'] as const;

type TableColumn = WholeTable['columns'][number];

function word(key: string, description: string): TableColumn {
  return { key, unit: '1', kind: 'text', description };
}

const framed = (columns: readonly FrameColumn[]): TableColumn[] =>
  columns.map(({ key, description }) => word(key, description));

/** The results of isometric tests as tables: one row an effort, one row a recording. Rows are kept until all were seen. */
export class PullTables {
  readonly #carried: readonly string[];
  readonly #efforts: Cell[][] = [];
  readonly #pulls: Cell[][] = [];

  /** @param carried - names of the columns of the manifest that are handed on */
  constructor(carried: readonly string[]) {
    this.#carried = carried;
  }

  add(outcome: AssessedPulls): void {
    const { item, report, protocol } = outcome;
    const frame = (columns: readonly FrameColumn[]): Cell[] => columns.map(({ value }) => value(outcome));
    const trial = [item.file, ...this.#carried.map((name) => item.carried[name] ?? ''), ...frame(TRIAL_COLUMNS)];
    const windowS = protocol.parameters.scoreWindow.value;
    for (const effort of report.efforts) {
      this.#efforts.push([
        ...trial,
        ...columnCells(EFFORT_COLUMNS, effortRow(effort, windowS)),
        ...columnCells(CALIBRATION_COLUMNS, report),
      ]);
    }
    this.#pulls.push([
      ...trial,
      ...frame(ORIGIN_COLUMNS),
      ...columnCells(PULL_COLUMNS, pullRow(report)),
      report.withheld.join('; '),
      report.gate.reasons.join('; '),
    ]);
  }

  tables(): WholeTable[] {
    const trial = [
      ...framed([FILE_COLUMN]),
      ...this.#carried.map((name) => word(name, 'as it stood in the manifest')),
      ...framed(TRIAL_COLUMNS),
    ];
    const withheld = word('withheld', 'codes of what was not given, for which figures are empty');
    const gate = word('gate_reasons', 'codes of what speaks against interpreting the test');
    return [
      { name: 'efforts.csv', columns: [...trial, ...EFFORT_COLUMNS, ...CALIBRATION_COLUMNS], rows: this.#efforts },
      {
        name: 'pulls.csv',
        columns: [...trial, ...framed(ORIGIN_COLUMNS), ...PULL_COLUMNS, withheld, gate],
        rows: this.#pulls,
      },
    ];
  }
}
