import type { TemplateResult } from 'lit';
import type { StudySession } from './study-session.ts';

/** The parts that a study may have on the page, in their order; each is a word in the address. */
export const STUDY_PARTS = ['quality', 'recount', 'groups', 'choices'] as const;

export type StudyPart = (typeof STUDY_PARTS)[number];

/** One part as the page shows it. */
export interface ShownPart {
  readonly part: StudyPart;
  /** loads the element, once it is asked for */
  readonly load: () => Promise<unknown>;
  /** the element with the session as its property */
  readonly show: (session: StudySession) => TemplateResult;
  /** left out where the study has nothing for it, such as no blinding */
  readonly isIn?: (session: StudySession) => boolean;
}

/** The part of an address among those that a study has; the first where the address names none of them. */
export function shownPart(parts: readonly ShownPart[], asked: string | null): ShownPart {
  return parts.find(({ part }) => part === asked) ?? parts[0]!;
}
