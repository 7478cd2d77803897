import type { ReliabilitySource } from '@surae/analysis';
import { COMPARED_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';

/** Whom an error was measured on, and how. Of people without complaint it is said so, and they are not held up as a pattern. */
export function studiedWords(group: string): string {
  return group.replace(/^healthy\b/, COMPARED_WORDS['without-complaint'].text);
}

/** Which error a verdict rests on, with its source. */
export function errorWords({ kind, citation, group, people }: ReliabilitySource): string {
  if (kind === 'own-clinic') return fill(COMPARED_WORDS['error-own'], { people: people ?? '' });
  if (people === null) return fill(COMPARED_WORDS['error-practice'], { source: citation });
  const who = fill(COMPARED_WORDS.people, { count: people });
  return fill(COMPARED_WORDS['error-used'], { source: citation, people: who, studied: studiedWords(group) });
}

/** A verdict by another error than the one that was used. */
export interface OtherVerdict {
  readonly source: ReliabilitySource;
  /** in words */
  readonly verdict: string;
}

/** How the verdict would change with another published error: each of them where it hangs on that, else one line. */
export function otherErrorWords(hangs: boolean | null, others: readonly OtherVerdict[]): readonly string[] {
  if (hangs === null || others.length === 0) return [];
  if (!hangs) return [COMPARED_WORDS['same-by-all'].text];
  const told = others.map(({ source: { citation, group }, verdict }) =>
    fill(COMPARED_WORDS['by-other'], { source: citation, studied: studiedWords(group), verdict }),
  );
  return [fill(COMPARED_WORDS.hangs, { others: told.join('; ') })];
}
