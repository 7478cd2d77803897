import { type Cell, columnCells } from '@surae/exchange';
import { HOP_COLUMNS, HOP_SERIES_COLUMNS } from '@surae/shared';
import type { AssessedHops } from '@surae/study';
import { type ResultTable, type Rows, word } from './table-shape.ts';

const FRAME = [
  word('file', 'the recording, as it was named'),
  word('side', 'left or right'),
  word('placement', 'where the hops were measured: platform or foot'),
  word('protocol', 'the rules of the test'),
  word('sha256', 'SHA-256 of the recording'),
];

/** The tables of hops: one row a hop, and one row a series. */
export const HOP_SHAPES: readonly ResultTable[] = [
  { name: 'hops.csv', title: 'every hop', columns: [...FRAME, ...HOP_COLUMNS] },
  {
    name: 'hop-series.csv',
    title: 'every series of hops',
    columns: [
      ...FRAME,
      ...HOP_SERIES_COLUMNS,
      word('withheld', 'codes of why figures are empty'),
      word('cautions', 'codes of what to mind'),
    ],
  },
];

/** The rows of one series of hops. */
export function hopRows({ item, report, sha256 }: AssessedHops): Rows {
  const frame: Cell[] = [item.file, report.side, report.placement, report.protocol.id, sha256];
  return {
    'hops.csv': report.hops.map((hop) => [...frame, ...columnCells(HOP_COLUMNS, hop)]),
    'hop-series.csv': [
      [...frame, ...columnCells(HOP_SERIES_COLUMNS, report), report.withheld.join('; '), report.cautions.join('; ')],
    ],
  };
}
