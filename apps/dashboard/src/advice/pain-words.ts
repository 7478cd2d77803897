import type { KnownFact, RuleTrace } from '@surae/guidance';
import { ADVICE_WORDS, MARK_WORDS, PAIN_BAND_WORDS, PAIN_BANDS, type PainBand } from '@surae/shared';
import { fill } from '../words/fill.ts';

/** Facts that are pain while something is done, of 10: how much that is, is said in words too. */
const painsInUse: ReadonlySet<string> = new Set([
  'pain-double-raise',
  'pain-single-raise',
  'pain-ten-raises',
  'pain-during-last',
  'pain-during-before',
  'pain-after-last',
  'pain-after-before',
  'worst-pain-lately',
  'pain-brisk-walk',
  'pain-twenty-hops',
]);

/** The span that a pain of 0 to 10 lies in; null for what is no pain. */
export function painBandOf(pain: number): PainBand | null {
  return pain >= 0 ? (PAIN_BANDS.find(({ most }) => pain <= most) ?? null) : null;
}

/** What a pain is called; empty for an answer that is none. */
export function painWords(code: string, { value }: Pick<KnownFact, 'value'>): string {
  const band = painsInUse.has(code) && typeof value === 'number' ? painBandOf(value) : null;
  if (band === null) return '';
  const below = PAIN_BANDS[PAIN_BANDS.indexOf(band) - 1]?.most ?? -1;
  return fill(PAIN_BAND_WORDS[band.code], { least: below + 1, most: band.most, over: below });
}

/** A line about an answer, with what its pain is called where it is one. */
export function withPain(code: string, answer: KnownFact, line: string): string {
  const band = painWords(code, answer);
  return band === '' ? line : fill(ADVICE_WORDS['fact-band'], { line, band });
}

/** Where words for pain are from; none where no pain was read. */
export function painBasis(traces: readonly RuleTrace[]): readonly string[] {
  const isNamed = traces.some(({ used }) => used.some(({ fact, answer }) => painWords(fact, answer) !== ''));
  const { source, mark } = PAIN_BANDS[0]!;
  return isNamed ? [fill(PAIN_BAND_WORDS.basis, { source, mark: MARK_WORDS[mark].text })] : [];
}
