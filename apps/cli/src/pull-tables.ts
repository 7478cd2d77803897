import { effortRow, pullRow } from '@surae/analysis';
import { type Cell, columnCells } from '@surae/exchange';
import { CALIBRATION_COLUMNS, EFFORT_COLUMNS, PULL_COLUMNS } from '@surae/shared';
import type { AssessedPulls } from '@surae/study';
import { type ResultTable, type Rows, word } from './table-shape.ts';

type Columns = ResultTable['columns'];

/** The tables of isometric tests: one row an effort, one row a recording. */
export function pullShapes(trial: Columns, origin: Columns, withheld: Columns[number]): ResultTable[] {
  const gate = word('gate_reasons', 'codes of what speaks against interpreting the test');
  return [
    {
      name: 'efforts.csv',
      title: 'every isometric effort',
      columns: [...trial, ...EFFORT_COLUMNS, ...CALIBRATION_COLUMNS],
    },
    {
      name: 'pulls.csv',
      title: 'every isometric test',
      columns: [...trial, ...origin, ...PULL_COLUMNS, withheld, gate],
    },
  ];
}

/** The rows of one recording, after the cells of its trial and of where it comes from. */
export function pullRows({ report, protocol }: AssessedPulls, trial: readonly Cell[], origin: readonly Cell[]): Rows {
  const windowS = protocol.parameters.scoreWindow.value;
  return {
    'efforts.csv': report.efforts.map((effort) => [
      ...trial,
      ...columnCells(EFFORT_COLUMNS, effortRow(effort, windowS)),
      ...columnCells(CALIBRATION_COLUMNS, report),
    ]),
    'pulls.csv': [
      [
        ...trial,
        ...origin,
        ...columnCells(PULL_COLUMNS, pullRow(report)),
        report.withheld.join('; '),
        report.gate.reasons.join('; '),
      ],
    ],
  };
}
