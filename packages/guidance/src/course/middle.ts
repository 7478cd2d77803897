/** The middle value; null of none. Source: definition of the median. */
export function middle(values: readonly number[]): number | null {
  const sorted = values.toSorted((one, other) => one - other);
  const [low, high] = [sorted[(sorted.length - 1) >> 1], sorted[sorted.length >> 1]];
  return low === undefined || high === undefined ? null : (low + high) / 2;
}
