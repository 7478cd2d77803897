import { requireCount, requireSameLength } from '../check.ts';

/** How often two raters used each pair of words, and the shares behind it. */
export interface WordCounts {
  readonly itemCount: number;
  /** counts[word of the first rater][word of the second] */
  readonly counts: readonly (readonly number[])[];
  /** share of each word of the first rater */
  readonly rows: readonly number[];
  /** share of each word of the second */
  readonly columns: readonly number[];
}

/**
 * How often two raters used each pair of words.
 *
 * @param first - word of the first rater for each item, n >= 2, each one of the words [-]
 * @param second - word of the second for the same items [-]
 * @param words - every word once, in the order of the rows and columns [-]
 * @returns counts and shares [-]
 * @throws {@link InputError} `too-short`; `length-mismatch`
 *
 * Source: definition
 */
export function wordCounts(first: readonly string[], second: readonly string[], words: readonly string[]): WordCounts {
  requireCount(first, 2, 'first');
  requireSameLength(first, second, 'second');
  const n = first.length;
  const places = new Map(words.map((word, place) => [word, place]));
  const counts = words.map(() => words.map(() => 0));
  first.forEach((word, item) => (counts[places.get(word)!][places.get(second[item])!] += 1));
  return {
    itemCount: n,
    counts,
    rows: counts.map((row) => row.reduce((sum, count) => sum + count, 0) / n),
    columns: words.map((_, j) => counts.reduce((sum, row) => sum + row[j], 0) / n),
  };
}

/**
 * Whether one of the raters used a single word throughout: the formula of the standard error then gives no width, though nothing
 * was told apart.
 *
 * @param table - counts of both [-]
 * @returns true when one did [-]
 *
 * Source: definition
 */
export function hasOneWordRater({ itemCount, counts }: WordCounts): boolean {
  const ofRow = counts.map((row) => row.reduce((sum, count) => sum + count, 0));
  const ofColumn = counts.map((_, j) => counts.reduce((sum, row) => sum + row[j], 0));
  return [...ofRow, ...ofColumn].includes(itemCount);
}
