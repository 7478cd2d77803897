import { neededCells, type QualityRow } from '@surae/study';
import type { StudySession } from './study-session.ts';

/** Which rows are shown. */
export const SHOWN = ['all', 'to-decide', 'flagged', 'include', 'exclude'] as const;
export type Shown = (typeof SHOWN)[number];

/** Orders of the rows. */
export const ORDERS = ['manifest', 'flags', 'name'] as const;
export type Order = (typeof ORDERS)[number];

/** How many rows stand on a page: thousands of them would be slow to draw and slow to read. */
export const PAGE = 50;

/** One row as the board shows it. */
export interface BoardRow {
  readonly row: QualityRow;
  /** its place among those that are assessed */
  readonly at: number;
  /** number under which it stands while names are hidden, from 1 */
  readonly number: number;
}

/** What is asked of the board. */
export interface BoardAsk {
  readonly shown: Shown;
  readonly order: Order;
  readonly search: string;
  /** page from 0 */
  readonly page: number;
}

/** The rows of one page, and how many there are in all. */
export interface BoardPage {
  readonly rows: readonly BoardRow[];
  readonly from: number;
  readonly of: number;
  readonly page: number;
  readonly pages: number;
}

/** Whether the study keeps names and groups from whoever looks: it is blinded, and a rater has not locked the counts. */
export function hidesNames(session: Pick<StudySession, 'content' | 'keyOf' | 'book'>): boolean {
  const { blinding } = session.content.declared.study;
  if (blinding === null) return false;
  return blinding.raters.some((rater) => {
    const key = session.keyOf(rater);
    return key === undefined || session.book(key).lock === null;
  });
}

/** The rows with the number that each has while names are hidden: by the hash of its bytes, which tells nothing. */
export function boardRows(rows: readonly QualityRow[]): BoardRow[] {
  const neutral = rows
    .map(({ trial: { sha256, trial } }, at) => ({ key: `${sha256 ?? '~'} ${trial}`, at }))
    .sort((a, b) => (a.key < b.key ? -1 : 1));
  const number = new Map(neutral.map(({ at }, place) => [at, place + 1]));
  return rows.map((row, at) => ({ row, at, number: number.get(at)! }));
}

function isShown({ status, flags }: QualityRow, shown: Shown): boolean {
  if (shown === 'all') return true;
  return shown === 'flagged' ? flags.length > 0 : status === shown;
}

/** Cells that a search looks at: the name, whose it is, and what is compared. */
export function cellsTold(study: Parameters<typeof neededCells>[0], { trial }: QualityRow): string[] {
  const cells = new Set(['person', 'visit', 'side', ...neededCells(study)]);
  return [trial.trial, ...[...cells].map((name) => trial.cells[name] ?? '')];
}

/** What is left to look at weighs most: refused and undecided rows first, then those with most flags. */
function weight({ status, flags }: QualityRow): number {
  return (status === 'to-decide' ? 100 : 0) + flags.length;
}

/** The page of the board that is asked for; a page that is not there any more is the last one. */
export function boardPage(
  rows: readonly BoardRow[],
  { shown, order, search, page }: BoardAsk,
  study: Parameters<typeof neededCells>[0],
  isHidden: boolean,
): BoardPage {
  const sought = search.trim().toLowerCase();
  const found = rows.filter(
    ({ row }) =>
      isShown(row, shown) &&
      (sought === '' || isHidden || cellsTold(study, row).some((cell) => cell.toLowerCase().includes(sought))),
  );
  const base = (a: BoardRow, b: BoardRow): number => (isHidden ? a.number - b.number : a.at - b.at);
  const byName = (a: BoardRow, b: BoardRow): number => (a.row.trial.trial < b.row.trial.trial ? -1 : 1);
  found.sort((a, b) => {
    if (order === 'flags') return weight(b.row) - weight(a.row) || base(a, b);
    return order === 'name' && !isHidden ? byName(a, b) : base(a, b);
  });
  const pages = Math.max(1, Math.ceil(found.length / PAGE));
  const at = Math.min(Math.max(page, 0), pages - 1);
  return { rows: found.slice(at * PAGE, (at + 1) * PAGE), from: at * PAGE, of: found.length, page: at, pages };
}
