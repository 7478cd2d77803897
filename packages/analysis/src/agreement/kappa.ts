import { requireRange } from '../check.ts';
import { normalQuantile } from '../signal/normal.ts';
import type { Bounds } from './bounds.ts';
import { hasOneWordRater, wordCounts } from './word-counts.ts';

/** How far two raters agree in naming what they saw, beyond chance. */
export interface Kappa {
  readonly itemCount: number;
  /** words that either of them used, in the order of the alphabet */
  readonly categories: readonly string[];
  /** counts[word of the first rater][word of the second] */
  readonly counts: readonly (readonly number[])[];
  readonly observedAgreement: number;
  readonly chanceAgreement: number;
  /** undefined when both used one word only: nothing was told apart, so nothing can be said */
  readonly kappa: number | undefined;
  /** undefined where kappa is, when every item agrees and when a rater used one word: the formula then gives no width */
  readonly interval: Bounds | undefined;
  /** share of agreement about one word: 2 n_ii / (n_i. + n_.i) */
  readonly agreementOn: readonly number[];
}

/**
 * Cohen's kappa of two raters over items, with its interval, and the agreement about each word.
 *
 * The interval takes items as independent; repetitions of one set are less than that, so it is rather too narrow than too wide.
 *
 * @param first - word of the first rater for each item, n >= 2 [-]
 * @param second - word of the second for the same items [-]
 * @param level - share of samples whose interval holds the true value [-]
 * @returns kappa, shares of agreement and the table behind them [-]
 * @throws {@link InputError} `too-short`; `length-mismatch`; `out-of-range` for the level
 *
 * Source: Cohen (1960), Educ Psychol Meas 20:37-46; standard error of Fleiss, Cohen & Everitt (1969), Psychol Bull 72:323-327;
 * agreement about one word: Cicchetti & Feinstein (1990), J Clin Epidemiol 43:551-558
 * Checked against: fixtures/reference/agreement.kappa.json
 */
export function cohenKappa(first: readonly string[], second: readonly string[], level: number): Kappa {
  requireRange(level, level > 0 && level < 1, 'level', '0 < level < 1');
  const categories = [...new Set([...first, ...second])].sort();
  const table = wordCounts(first, second, categories);
  const { itemCount: n, counts, rows, columns } = table;
  const observed = counts.reduce((sum, row, i) => sum + row[i], 0) / n;
  const chance = rows.reduce((sum, share, i) => sum + share * columns[i], 0);
  const kappa = categories.length < 2 ? undefined : (observed - chance) / (1 - chance);
  const half = normalQuantile((1 + level) / 2) * standardError(counts, rows, columns, observed, chance);
  return {
    itemCount: n,
    categories,
    counts,
    observedAgreement: observed,
    chanceAgreement: chance,
    kappa,
    interval:
      kappa === undefined || observed === 1 || hasOneWordRater(table)
        ? undefined
        : { low: Math.max(-1, kappa - half), high: Math.min(1, kappa + half) },
    agreementOn: categories.map((_, i) => (2 * counts[i][i]) / (n * (rows[i] + columns[i]))),
  };
}

function standardError(
  counts: readonly (readonly number[])[],
  rows: readonly number[],
  columns: readonly number[],
  observed: number,
  chance: number,
): number {
  const n = counts.flat().reduce((sum, count) => sum + count, 0);
  // Fleiss, Cohen & Everitt (1969), Eq. 13
  let onDiagonal = 0;
  let beside = 0;
  counts.forEach((row, i) =>
    row.forEach((count, j) => {
      const share = count / n;
      if (i === j) onDiagonal += share * (1 - chance - (rows[i] + columns[i]) * (1 - observed)) ** 2;
      else beside += share * (columns[i] + rows[j]) ** 2;
    }),
  );
  const varianceAbove = onDiagonal + (1 - observed) ** 2 * beside - (observed * chance - 2 * chance + observed) ** 2;
  return Math.sqrt(Math.max(0, varianceAbove) / n) / (1 - chance) ** 2;
}
