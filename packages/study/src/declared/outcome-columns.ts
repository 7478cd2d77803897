import { type Column, HOP_SERIES_COLUMNS, PULL_COLUMNS, SET_COLUMNS } from '@surae/shared';
import type { StudyFile } from './study-document.ts';

/** The columns of one trial, by its test: what can be an outcome, and what a rule can ask. */
export const OUTCOME_COLUMNS: Readonly<Record<StudyFile['test'], readonly Column[]>> = {
  'heel-raise': SET_COLUMNS,
  isometric: PULL_COLUMNS,
  'hop-series': HOP_SERIES_COLUMNS,
};

/** The column of a key; undefined where the table of the test has none. */
export function outcomeColumn(test: StudyFile['test'], key: string): Column | undefined {
  return OUTCOME_COLUMNS[test].find((column) => column.key === key);
}

/** The keys that are nearest to one that is not there, for a refusal: those that share a part of it, else the first few. */
export function nearColumns(test: StudyFile['test'], key: string): string {
  const numbers = OUTCOME_COLUMNS[test].filter(({ kind }) => kind === 'number').map((column) => column.key);
  const parts = key.split(/[._]/).filter((part) => part.length > 2);
  const near = numbers.filter((one) => parts.some((part) => one.includes(part)));
  return (near.length > 0 ? near : numbers).slice(0, 8).join(', ');
}
