import { type Cell, rounded } from '@surae/exchange';
import type { IssueRow } from '@surae/study';
import { plain } from './readable-number.ts';

/** An issue as it stands in its table, after the cells of the recording. */
export function issueCells({ code, severity, from_s: fromS, to_s: toS, details, sentence }: IssueRow): Cell[] {
  const number = (value: number | null): number | null => rounded(value) as number | null;
  return [code, severity, number(fromS), number(toS), JSON.stringify(rounded(details)), sentence];
}

/** Where on the recording an issue is, as one reads it; empty where it has no place. */
export function issuePlace(row: IssueRow): string {
  if (row.from_s === null || row.to_s === null) return '';
  return row.to_s - row.from_s < 0.05
    ? `at ${plain(row.from_s, 1)} s: `
    : `${plain(row.from_s, 1)} to ${plain(row.to_s, 1)} s: `;
}
