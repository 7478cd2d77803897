/** Standard deviation of values, with n - 1 in the divisor; null of fewer than a least number, which is at least 2 [unit of values]. */
export function scatter(values: ArrayLike<number>, least: number): number | null {
  const all = Array.from(values);
  if (all.length < least) return null;
  const mean = all.reduce((sum, value) => sum + value, 0) / all.length;
  return Math.sqrt(all.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (all.length - 1));
}
