import type { CasebookPerson } from '@surae/casebook';
import { emptyDraft, type LogDraft } from './log-draft.ts';
import type { LogKind } from './log-entry.ts';
import { nextTotal } from './total-draft.ts';

/** What something new begins with: nothing, but for what seldom changes from one time to the next. */
export function beginDraft(
  kind: LogKind,
  on: string,
  { questionnaireTotals }: Pick<CasebookPerson, 'questionnaireTotals'>,
): LogDraft {
  const empty = emptyDraft(kind, on);
  return kind === 'questionnaire-total' ? { ...empty, total: nextTotal(questionnaireTotals.at(-1)?.body) } : empty;
}
