/** No study is planned with more: beyond it the wish is refused. */
export const MOST_COUNT = 100_000;

/**
 * The least whole number from a start on for which a condition holds that stays true once it is.
 *
 * @param from - the start, a whole number [-]
 * @param holds - the condition [-]
 * @returns the number; undefined where it does not hold at {@link MOST_COUNT} either [-]
 *
 * Source: bisection
 */
export function leastCount(from: number, holds: (count: number) => boolean): number | undefined {
  let high = from;
  while (!holds(high)) {
    if (high >= MOST_COUNT) return undefined;
    high = Math.min(high * 2, MOST_COUNT);
  }
  let low = from - 1;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return high;
}
