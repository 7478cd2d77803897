import { requireRange } from '../check.ts';
import { InputError } from '../errors.ts';
import { normalQuantile } from '../signal/normal.ts';
import type { Bounds } from './bounds.ts';
import { hasOneWordRater, type WordCounts, wordCounts } from './word-counts.ts';

/** How much two words differ: steps between them, their square, or a table of its own with zeros where they are the same. */
export type WordWeights = 'linear' | 'quadratic' | readonly (readonly number[])[];

/** How far two raters agree in placing what they saw on an ordered scale, beyond chance. */
export interface WeightedKappa {
  readonly itemCount: number;
  /** the scale, lowest word first, words that nobody used included */
  readonly words: readonly string[];
  /** counts[word of the first rater][word of the second] */
  readonly counts: readonly (readonly number[])[];
  /** undefined when both used one and the same word only: nothing was told apart */
  readonly kappa: number | undefined;
  /** undefined where kappa is, when every item agrees and when a rater used one word: the formula then gives no width */
  readonly interval: Bounds | undefined;
}

/** Share of agreement of each pair of words: 1 where they are the same, 0 where they are furthest apart. */
function agreementWeights(words: readonly string[], weights: WordWeights): number[][] {
  const most = words.length - 1;
  if (weights === 'linear') return words.map((_, i) => words.map((__, j) => 1 - Math.abs(i - j) / most));
  if (weights === 'quadratic') return words.map((_, i) => words.map((__, j) => 1 - ((i - j) / most) ** 2));
  const greatest = Math.max(...weights.flat());
  const fits = weights.length === words.length && weights.every((row) => row.length === words.length);
  const whole = weights.every((row, i) => row.every((one, j) => (i === j ? one === 0 : one >= 0)));
  if (!fits || !whole || !(greatest > 0)) {
    const expected = 'a table with a row and a column for each word, zeros where they are the same, and none below 0';
    throw new InputError('out-of-range', { argument: 'weights', expected, actual: JSON.stringify(weights) });
  }
  return weights.map((row) => row.map((one) => 1 - one / greatest));
}

function requireWords(words: readonly string[], used: readonly string[]): void {
  requireRange(words.length, words.length >= 2, 'words', 'at least 2');
  const strange = used.find((word) => !words.includes(word));
  const twice = words.find((word, place) => words.indexOf(word) !== place);
  if (strange === undefined && twice === undefined) return;
  const actual = twice === undefined ? `"${strange}" is not among them` : `"${twice}" twice`;
  throw new InputError('out-of-range', { argument: 'words', expected: 'every word of the raters, each once', actual });
}

/** Fleiss, Cohen & Everitt (1969), for kappa that is not taken to be zero. */
function standardError(table: WordCounts, share: number[][], observed: number, chance: number): number {
  const { itemCount: n, counts, rows, columns } = table;
  const ofRow = share.map((row) => row.reduce((sum, one, j) => sum + one * columns[j], 0));
  const ofColumn = share.map((_, j) => share.reduce((sum, row, i) => sum + row[j] * rows[i], 0));
  let squares = 0;
  counts.forEach((row, i) =>
    row.forEach((count, j) => {
      squares += (count / n) * (share[i][j] * (1 - chance) - (ofRow[i] + ofColumn[j]) * (1 - observed)) ** 2;
    }),
  );
  const above = squares - (observed * chance - 2 * chance + observed) ** 2;
  return Math.sqrt(Math.max(0, above) / n) / (1 - chance) ** 2;
}

/**
 * Weighted kappa of two raters over items on an ordered scale, with its interval: words that lie further apart count as more of
 * a disagreement. With weights by the square of the steps it is the intraclass correlation of the steps, up to 1 / n.
 *
 * The interval takes items as independent; repetitions of one set are less than that, so it is rather too narrow than too wide.
 *
 * @param first - word of the first rater for each item, n >= 2 [-]
 * @param second - word of the second for the same items [-]
 * @param words - the scale, lowest word first, at least 2, each once [-]
 * @param weights - how much two words differ, see {@link WordWeights} [-]
 * @param level - share of samples whose interval holds the true value [-]
 * @returns kappa with its interval and the table behind it [-]
 * @throws {@link InputError} `too-short`; `length-mismatch`; `out-of-range` for the level, the words or the weights
 *
 * Source: Cohen (1968), Psychol Bull 70:213-220; standard error of Fleiss, Cohen & Everitt (1969), Psychol Bull 72:323-327;
 * squares and the intraclass correlation: Fleiss & Cohen (1973), Educ Psychol Meas 33:613-619
 * Checked against: fixtures/reference/agreement.weighted-kappa.json
 */
export function weightedKappa(
  first: readonly string[],
  second: readonly string[],
  words: readonly string[],
  weights: WordWeights,
  level: number,
): WeightedKappa {
  requireRange(level, level > 0 && level < 1, 'level', '0 < level < 1');
  requireWords(words, [...first, ...second]);
  const table = wordCounts(first, second, words);
  const share = agreementWeights(words, weights);
  const { itemCount, counts, rows, columns } = table;
  const sum = (of: (i: number, j: number) => number): number =>
    share.reduce((all, row, i) => all + row.reduce((part, one, j) => part + one * of(i, j), 0), 0);
  const observed = sum((i, j) => counts[i][j] / itemCount);
  const chance = sum((i, j) => rows[i] * columns[j]);
  // by whole numbers, so that no rounding tells apart what nobody did
  const isOneWord = counts.some((row, i) => row[i] === itemCount);
  const isWhole = counts.every((row, i) => row.every((count, j) => count === 0 || share[i][j] === 1));
  const found = { itemCount, words, counts };
  if (isOneWord || chance >= 1) return { ...found, kappa: undefined, interval: undefined };
  const kappa = (observed - chance) / (1 - chance);
  if (isWhole || hasOneWordRater(table)) return { ...found, kappa, interval: undefined };
  const half = normalQuantile((1 + level) / 2) * standardError(table, share, observed, chance);
  return { ...found, kappa, interval: { low: Math.max(-1, kappa - half), high: Math.min(1, kappa + half) } };
}
