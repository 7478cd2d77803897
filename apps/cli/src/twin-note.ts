import { twinIssue } from '@surae/study';
import type { Entry } from './entry.ts';
import { issueCells } from './issue-rows.ts';
import { labelled } from './text-lines.ts';
import { rowsAfter, writtenRows } from './written-rows.ts';

/** Width of the names at the left of a report in words. */
const LABEL_WIDTH = 16;

function notedJson(line: string, sameAs: string): string {
  const result = JSON.parse(line) as { issues: unknown[] };
  return JSON.stringify({ ...result, issues: [...result.issues, twinIssue(sameAs)] });
}

/** The entry with a note that an earlier file of the list had the very same bytes; a refused one stays as it is. */
export function notedTwin(entry: Entry, sameAs: string, width: number): Entry {
  if (entry.refusal !== null) return entry;
  const { json, rows, trial, text } = entry;
  const note = (): string[] => labelled('  note', twinIssue(sameAs).sentence, LABEL_WIDTH, width);
  return {
    ...entry,
    ...(json === undefined ? {} : { json: notedJson(json, sameAs) }),
    ...(rows === undefined || trial === undefined
      ? {}
      : {
          rows: {
            ...rows,
            'issues.csv': rowsAfter(rows['issues.csv'], writtenRows([[...trial, ...issueCells(twinIssue(sameAs))]])),
          },
        }),
    ...(text === undefined
      ? {}
      : {
          text: { ...text, lines: [...text.lines.slice(0, text.noteAt), ...note(), ...text.lines.slice(text.noteAt)] },
        }),
  };
}
