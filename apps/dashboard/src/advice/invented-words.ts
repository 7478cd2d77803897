import type { CasebookPerson } from '@surae/casebook';
import { ADVICE_WORDS } from '@surae/shared';

/** What marks whatever is proposed of an invented person of the demo; null of anybody else. */
export function inventedWords({ person }: Pick<CasebookPerson, 'person'>): string | null {
  return person.demo ? ADVICE_WORDS.invented.text : null;
}
