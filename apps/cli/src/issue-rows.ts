import type { Issue } from '@surae/analysis';
import type { Cell } from '@surae/exchange';
import { ISSUE_SENTENCES } from '@surae/shared';
import type { AnyAssessed } from './assess-file.ts';
import { plain } from './readable-number.ts';
import { rounded } from './rounded.ts';

/** Something about a recording that a reader must know, as it stands in a file. */
export interface IssueRow {
  readonly code: string;
  readonly severity: Issue['severity'];
  /** null where it concerns no place of the recording */
  readonly from_s: number | null;
  readonly to_s: number | null;
  /** the figures of the issue by name, such as how many */
  readonly details: Readonly<Record<string, number | string>>;
  readonly sentence: string;
}

function note(code: string, sentence: string): IssueRow {
  return { code, severity: 'note', from_s: null, to_s: null, details: {}, sentence };
}

/** That an earlier file of the list had the very same bytes: a copy under another name, or a row written twice. */
export function twinIssue(sameAs: string): IssueRow {
  return note('same-bytes', `This recording was in the list before: ${sameAs} is the same.`);
}

/** Issues of the trace (a hop series has none: what speaks against it stands in its own lists), then what was in the file and could not be used. */
export function issueRows({ report, recording, sameAs }: AnyAssessed): IssueRow[] {
  return [
    ...('issues' in report ? report.issues : []).map((issue) => ({
      code: issue.code,
      severity: issue.severity,
      from_s: issue.fromS,
      to_s: issue.toS,
      details: issue.details ?? {},
      sentence: ISSUE_SENTENCES[issue.code].text,
    })),
    ...recording.unusedColumns.map(({ column, reason }) => {
      const why = reason === 'no-axis' ? 'its name lacks the axis' : 'its name is none of ours';
      return note('unused-column', `The column "${column}" was not used: ${why}.`);
    }),
    ...(sameAs === undefined ? [] : [twinIssue(sameAs)]),
  ];
}

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
