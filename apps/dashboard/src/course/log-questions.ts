import type { LogEntry, LoggedEntry } from './log-entry.ts';

/** What is asked about an entry before it is kept, and of one that stands: never a reason to drop it. */
export type LogQuestion =
  | { readonly code: 'twice'; readonly other: LoggedEntry }
  | { readonly code: 'future' }
  | { readonly code: 'before-first'; readonly firstDay: string };

/** What is known when an entry is looked at. */
export interface LogKnown {
  /** day of the calendar at the place where it is looked at */
  readonly today: string;
  /** day of the first visit; null without one */
  readonly firstDay: string | null;
  readonly logged: readonly LoggedEntry[];
}

/** Whether there can be but one of a day: of mornings always, of the same thing done by the same leg; runs and notes may be many. */
function isSame(one: LogEntry, other: LogEntry): boolean {
  // one file is one run, whatever day was written beside it
  if (one.kind === 'run' && other.kind === 'run' && one.body.fileSha256 !== undefined) {
    if (one.body.fileSha256 === other.body.fileSha256) return true;
  }
  if (one.kind !== other.kind || one.body.on !== other.body.on) return false;
  if (one.kind === 'done-item' && other.kind === 'done-item') {
    return one.body.what === other.body.what && one.body.side === other.body.side;
  }
  if (one.kind === 'target' && other.kind === 'target') {
    return one.body.test === other.body.test && one.body.side === other.body.side;
  }
  if (one.kind === 'questionnaire-total' && other.kind === 'questionnaire-total') {
    return one.body.questionnaire === other.body.questionnaire && one.body.side === other.body.side;
  }
  if (one.kind === 'knee-to-wall' && other.kind === 'knee-to-wall') return one.body.side === other.body.side;
  return (
    one.kind === 'morning-check' || one.kind === 'on-feet' || JSON.stringify(one.body) === JSON.stringify(other.body)
  );
}

/** What is to be asked about an entry; `id` is its own where it is kept already, so that it is not held against itself. */
export function logQuestions(
  entry: LogEntry,
  { today, firstDay, logged }: LogKnown,
  id: string | null = null,
): readonly LogQuestion[] {
  const { on } = entry.body;
  const other = logged.find((one) => one.id !== id && isSame(one, entry));
  return [
    ...(on > today ? [{ code: 'future' } as const] : []),
    ...(firstDay !== null && on < firstDay ? [{ code: 'before-first', firstDay } as const] : []),
    ...(other === undefined ? [] : [{ code: 'twice', other } as const]),
  ];
}
