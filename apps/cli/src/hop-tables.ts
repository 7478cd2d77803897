import { type Cell, columnCells } from '@surae/exchange';
import { type Column, HOP_COLUMNS, HOP_SERIES_COLUMNS } from '@surae/shared';
import type { WholeTable } from './comparison-tables.ts';
import type { AssessedHops } from './hop-file.ts';

/** Names of the tables of hops, in the order in which they are named to the user. */
export const HOP_TABLES = ['hops.csv', 'hop-series.csv'] as const;

function word(key: string, description: string): Pick<Column, 'key' | 'unit' | 'kind' | 'description'> {
  return { key, unit: '1', kind: 'text', description };
}

const FRAME = [
  word('file', 'the recording, as it was named'),
  word('side', 'left or right'),
  word('placement', 'where the hops were measured: platform or foot'),
  word('protocol', 'the rules of the test'),
  word('sha256', 'SHA-256 of the recording'),
];

/** All hop series as tables: one row a hop, and one row a series. */
export function hopTables(outcomes: readonly AssessedHops[]): WholeTable[] {
  const frame = ({ item, report, sha256 }: AssessedHops): Cell[] => [
    item.file,
    report.side,
    report.placement,
    report.protocol.id,
    sha256,
  ];
  const lists = [word('withheld', 'codes of why figures are empty'), word('cautions', 'codes of what to mind')];
  return [
    {
      name: 'hops.csv',
      columns: [...FRAME, ...HOP_COLUMNS],
      rows: outcomes.flatMap((one) => one.report.hops.map((hop) => [...frame(one), ...columnCells(HOP_COLUMNS, hop)])),
    },
    {
      name: 'hop-series.csv',
      columns: [...FRAME, ...HOP_SERIES_COLUMNS, ...lists],
      rows: outcomes.map((one) => [
        ...frame(one),
        ...columnCells(HOP_SERIES_COLUMNS, one.report),
        one.report.withheld.join('; '),
        one.report.cautions.join('; '),
      ]),
    },
  ];
}
