import { type Cell, columnCells } from '@surae/exchange';
import { CHANGE_COLUMNS, LEG_COLUMNS, LEGS_COLUMNS, RATIO_COLUMNS } from '@surae/shared';
import { changeRows, legRow, legsRow, remarksOf } from './comparison-views.ts';
import type { Comparison, LegsComparison } from './comparisons.ts';
import { type ResultTable, type Rows, word } from './table-shape.ts';

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

const SIDE_COLUMNS = [...LEGS_COLUMNS, ...RATIO_COLUMNS];

/** The tables of comparisons: the legs of each visit, each leg by itself, its changes, and what is said with all of them. */
export const COMPARISON_SHAPES: readonly ResultTable[] = [
  { name: 'sides.csv', title: 'both legs of each visit', columns: SIDE_COLUMNS },
  { name: 'legs.csv', title: 'each leg of each visit', columns: LEG_COLUMNS },
  { name: 'changes.csv', title: 'changes of each leg over its visits', columns: CHANGE_COLUMNS },
  { name: 'remarks.csv', title: 'what is said with comparisons', columns: REMARK_COLUMNS },
];

function legRows({ group, found }: LegsComparison): Cell[][] {
  return (['left', 'right'] as const).flatMap((side) => {
    const [set, finding] = [group.legs[side], found.findings[side]];
    return set === null || finding === null ? [] : [columnCells(LEG_COLUMNS, legRow(side, set, finding))];
  });
}

/** The rows that a comparison has in each table. */
export function comparisonRows(comparison: Comparison): Rows {
  const { kind, group } = comparison;
  const remarks = remarksOf(comparison).map(({ about, side, since, code, sentence, unblock }) => [
    group.person,
    comparison.kind === 'legs' ? comparison.group.visit : null,
    kind,
    side,
    since,
    about,
    code,
    sentence,
    unblock,
  ]);
  const figures: Rows =
    comparison.kind === 'legs'
      ? { 'sides.csv': [columnCells(SIDE_COLUMNS, legsRow(comparison))], 'legs.csv': legRows(comparison) }
      : { 'changes.csv': changeRows(comparison).map((row) => columnCells(CHANGE_COLUMNS, row)) };
  return { ...figures, 'remarks.csv': remarks };
}
