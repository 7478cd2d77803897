import { type Cell, columnCells } from '@surae/exchange';
import { CHANGE_COLUMNS, type Column, LEG_COLUMNS, LEGS_COLUMNS, RATIO_COLUMNS } from '@surae/shared';
import { changeRows, legRow, legsRow, remarksOf } from './comparison-views.ts';
import type { Comparison } from './comparisons.ts';

/** A table that is written beside those of the recordings. */
export interface WholeTable {
  readonly name: string;
  readonly columns: readonly Pick<Column, 'key' | 'unit' | 'kind' | 'description'>[];
  readonly rows: readonly (readonly Cell[])[];
}

function word(key: string, description: string): Pick<Column, 'key' | 'unit' | 'kind' | 'description'> {
  return { key, unit: '1', kind: 'text', description };
}

const REMARK_COLUMNS = [
  word('person', 'as it stood in the manifest'),
  word('visit', 'as it stood in the manifest; empty for a leg over its visits'),
  word('comparison', 'legs or visits'),
  word('side', 'left or right; empty where it is of both'),
  word('since', 'visit-before, first-visit or all-visits; empty where it is of no change'),
  word(
    'about',
    'against-ratio, against-change, caution, reference, no-reference, ratio-error, under-other-reliability or own-reliability',
  ),
  word('code', 'code of the remark'),
  word('sentence', 'the same in words'),
  word('unblock', 'what would lift a reason against a figure'),
];

/** Names of the tables of comparisons, in the order in which they are named to the user. */
export const COMPARISON_TABLES = ['sides.csv', 'legs.csv', 'changes.csv', 'remarks.csv'] as const;

/** All comparisons as tables: the legs of each visit, each leg by itself, its changes, and what is said with all of them. */
export function comparisonTables(comparisons: readonly Comparison[]): WholeTable[] {
  const ofLegs = comparisons.filter((one) => one.kind === 'legs');
  const ofVisits = comparisons.filter((one) => one.kind === 'visits');
  const sideColumns = [...LEGS_COLUMNS, ...RATIO_COLUMNS];
  const rows = {
    'sides.csv': ofLegs.map((one) => columnCells(sideColumns, legsRow(one))),
    'legs.csv': ofLegs.flatMap(({ group, found }) =>
      (['left', 'right'] as const).flatMap((side) => {
        const [set, finding] = [group.legs[side], found.findings[side]];
        return set === null || finding === null ? [] : [columnCells(LEG_COLUMNS, legRow(side, set, finding))];
      }),
    ),
    'changes.csv': ofVisits.flatMap((one) => changeRows(one).map((row) => columnCells(CHANGE_COLUMNS, row))),
    'remarks.csv': comparisons.flatMap((one) =>
      remarksOf(one).map(({ about, side, since, code, sentence, unblock }) => [
        one.group.person,
        one.kind === 'legs' ? one.group.visit : null,
        one.kind,
        side,
        since,
        about,
        code,
        sentence,
        unblock,
      ]),
    ),
  };
  const columns = {
    'sides.csv': sideColumns,
    'legs.csv': LEG_COLUMNS,
    'changes.csv': CHANGE_COLUMNS,
    'remarks.csv': REMARK_COLUMNS,
  };
  return COMPARISON_TABLES.map((name) => ({ name, columns: columns[name], rows: rows[name] }));
}
