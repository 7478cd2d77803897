/** What a text is made of, as far as the formula asks. */
export interface TextCounts {
  readonly letters: number;
  readonly words: number;
  readonly sentences: number;
}

/**
 * Letters, words and sentences of a text. A word holds a letter, so that a number in digits is none; a sentence ends with a point,
 * a question mark or a colon before a blank, or with the text.
 */
export function textCounts(text: string): TextCounts {
  const words = text.split(/[^\p{L}\p{N}'’-]+/u).filter((word) => /\p{L}/u.test(word));
  const sentences = text.split(/[.!?:](?=\s|$)/).filter((part) => /\p{L}/u.test(part)).length;
  return { letters: [...text.matchAll(/\p{L}/gu)].length, words: words.length, sentences };
}

/**
 * Grade of school at which a text can be read, by letters and sentences per hundred words; no dictionary and no syllables.
 *
 * Source: Coleman & Liau (1975), J Appl Psychol 60:283-284; the coefficients from memory
 */
export function colemanLiau({ letters, words, sentences }: TextCounts): number {
  return (0.0588 * 100 * letters) / words - (0.296 * 100 * sentences) / words - 15.8;
}
