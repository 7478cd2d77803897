import { requireCount, requireRange, requireSameLength } from '../check.ts';

/** How often two raters counted the same. */
export interface CountAgreement {
  readonly setCount: number;
  readonly same: number;
  readonly withinOne: number;
  /** largest difference, first minus second, with its sign */
  readonly largest: number;
}

/**
 * How many sets two raters counted alike, to one repetition, and how far they were apart at most.
 *
 * @param first - count of the first rater for each set, n >= 1, whole, >= 0 [repetitions]
 * @param second - count of the second for the same sets [repetitions]
 * @returns number of sets with the same count and within one, and the largest difference [sets, repetitions]
 * @throws {@link InputError} `too-short`; `length-mismatch`; `out-of-range` for a count that is none
 *
 * Source: definition
 */
export function countAgreement(first: readonly number[], second: readonly number[]): CountAgreement {
  requireCount(first, 1, 'first');
  requireSameLength(first, second, 'second');
  for (const count of [...first, ...second]) {
    requireRange(count, Number.isInteger(count) && count >= 0, 'counts', 'whole numbers from 0 on');
  }
  const differences = first.map((count, set) => count - second[set]);
  const within = (reach: number): number => differences.filter((difference) => Math.abs(difference) <= reach).length;
  const largest = differences.reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most), 0);
  return { setCount: first.length, same: within(0), withinOne: within(1), largest };
}
