import type { QuestionnaireTotal } from '@surae/casebook';
import { QUESTIONNAIRES, type QuestionnaireEntry } from '@surae/shared';
import { typedNumber } from '../journey/person-form.ts';

/** A total of a questionnaire as far as it was chosen and typed. */
export interface TotalDraft {
  /** code of the questionnaire; empty is not chosen */
  readonly questionnaire: string;
  readonly languageVersion: string;
  readonly total: string;
  /** null where the questionnaire is about no single leg */
  readonly side: QuestionnaireTotal['side'];
}

/** Why a total is not kept as it is, in a code that has words. */
export type TotalProblem = 'which-missing' | 'version-missing' | 'total-missing' | 'total-range';

export type TotalProblems = Readonly<Partial<Record<'questionnaire' | 'languageVersion' | 'total', TotalProblem>>>;

export const emptyTotal: TotalDraft = { questionnaire: '', languageVersion: '', total: '', side: null };

/** What is known of a questionnaire by its code; undefined for one that somebody else wrote down. */
export function questionnaireOf(code: string): QuestionnaireEntry | undefined {
  return QUESTIONNAIRES.find(({ id }) => id === code);
}

/** The end of its range that is best. */
export function bestTotal({ range: [least, most], best }: QuestionnaireEntry): number {
  return best === 'high' ? most : least;
}

/** The draft that a total would come from. */
export function totalDraftOf({ questionnaire, languageVersion, total, side }: QuestionnaireTotal): TotalDraft {
  return { questionnaire, languageVersion, total: String(total), side };
}

/** A new one, by the questionnaire, the version and the leg of the one before: they seldom change, and a total does. */
export function nextTotal(before: QuestionnaireTotal | undefined): TotalDraft {
  return before === undefined ? emptyTotal : { ...totalDraftOf(before), total: '' };
}

function totalProblem({ questionnaire, total }: TotalDraft): TotalProblem | undefined {
  const value = typedNumber(total);
  if (value === null) return 'total-missing';
  const range = questionnaireOf(questionnaire)?.range;
  if (value === undefined) return range === undefined ? 'total-missing' : 'total-range';
  return range !== undefined && (value < range[0] || value > range[1]) ? 'total-range' : undefined;
}

/** What is missing or cannot be, by its field; a total outside the range of its questionnaire is no total of it. */
export function totalProblems(draft: TotalDraft): TotalProblems {
  const total = totalProblem(draft);
  return {
    ...(draft.questionnaire === '' ? { questionnaire: 'which-missing' } : {}),
    ...(total === undefined ? {} : { total }),
    ...(draft.languageVersion.trim() === '' ? { languageVersion: 'version-missing' } : {}),
  };
}

/** The total that a draft without problems is. */
export function totalOf({ questionnaire, languageVersion, total, side }: TotalDraft, on: string): QuestionnaireTotal {
  return { questionnaire, languageVersion: languageVersion.trim(), total: typedNumber(total) ?? 0, on, side };
}
