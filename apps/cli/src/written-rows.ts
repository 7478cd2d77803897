import { type Cell, csvLines } from '@surae/exchange';
import type { Rows } from './table-shape.ts';

/**
 * Rows of a table as they stand in its file of comma-separated text. Whoever found them writes them, so that a run of many
 * recordings has its numbers turned into text once, and by the threads that are many.
 */
export interface WrittenRows {
  readonly count: number;
  readonly text: string;
}

/** Written rows by the name of their table. */
export type WrittenTables = Readonly<Record<string, WrittenRows>>;

export function writtenRows(rows: readonly (readonly Cell[])[]): WrittenRows {
  return { count: rows.length, text: csvLines(rows) };
}

/** The rows of every table as they stand in its file. */
export function asWritten(rows: Rows): WrittenTables {
  return Object.fromEntries(Object.entries(rows).map(([name, own]) => [name, writtenRows(own)]));
}

/** The rows of one and then those of the other. */
export function rowsAfter(first: WrittenRows | undefined, next: WrittenRows): WrittenRows {
  if (first === undefined) return next;
  return { count: first.count + next.count, text: first.text + next.text };
}
