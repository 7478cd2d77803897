import type { OwnReliability, RatioError, ReliabilitySource } from '@surae/analysis';
import { COMPARED_WORDS, COMPARISON_RULES, inWords, OWN_RATIO_SENTENCES, RATIO_ERROR_SENTENCES } from '@surae/shared';
import { fill } from '../words/fill.ts';

/** Whom an error was measured on, and how. Of people without complaint it is said so, and they are not held up as a pattern. */
export function studiedWords(source: Pick<ReliabilitySource, 'id' | 'group'>): string {
  const group = source.group.replace(/^healthy\b/, '{healthy}');
  return fill({ text: inWords(`${source.id}.group`, group) }, { healthy: COMPARED_WORDS['without-complaint'].text });
}

/** Which error a verdict rests on, with its source. */
export function errorWords(from: ReliabilitySource): string {
  const { kind, citation, people } = from;
  if (kind === 'own-clinic') {
    const plain = COMPARISON_RULES.ownPairsPlain.value;
    const code = people !== null && people < plain ? 'error-own-margin' : 'error-own';
    return fill(COMPARED_WORDS[code], { people: people ?? '', source: citation, plain });
  }
  if (people === null) return fill(COMPARED_WORDS['error-practice'], { source: citation });
  const who = fill(COMPARED_WORDS.people, { count: people });
  return fill(COMPARED_WORDS['error-used'], { source: citation, people: who, studied: studiedWords(from) });
}

/** Why the clinic's own error of a test is not used; nothing where there is none, or it is used. */
export function ownUnusedWords(own: OwnReliability | undefined, unit: string): readonly string[] {
  if (own === undefined) return [];
  const least = COMPARISON_RULES.ownPairsLeast.value;
  if (own.pairs < least) return [fill(COMPARED_WORDS['own-too-few'], { pairs: own.pairs, least })];
  return own.unit === unit ? [] : [COMPARED_WORDS['own-other-unit'].text];
}

/** Which error a ratio of the legs rests on, where the clinic has repeated ratios of its own. */
export function ratioErrorWords({ from, own, pairs, source }: RatioError): readonly string[] {
  if (own === 'none') return [];
  const told =
    source === null ? [] : [fill(COMPARED_WORDS['own-ratios-from'], { pairs: pairs ?? '', source: source.citation })];
  return [RATIO_ERROR_SENTENCES[from].text, OWN_RATIO_SENTENCES[own].text, ...told];
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
  const told = others.map(({ source, verdict }) =>
    fill(COMPARED_WORDS['by-other'], { source: source.citation, studied: studiedWords(source), verdict }),
  );
  return [fill(COMPARED_WORDS.hangs, { others: told.join('; ') })];
}
