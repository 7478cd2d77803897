import type { Issue } from '@surae/analysis';
import { ISSUE_SENTENCES } from '@surae/shared';
import type { AnyAssessed } from './assess-listed.ts';

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
