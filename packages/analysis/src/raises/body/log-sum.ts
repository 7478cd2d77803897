/**
 * Logarithm of the sum of two numbers given by their logarithms.
 *
 * @param a - first logarithm, -Infinity for zero [nat]
 * @param b - second logarithm [nat]
 * @returns log(exp(a) + exp(b)) without overflow [nat]
 *
 * Source: definition
 */
export function logAdd(a: number, b: number): number {
  if (a === -Infinity) return b;
  if (b === -Infinity) return a;
  const gap = a - b;
  if (gap > 36) return a;
  if (gap < -36) return b;
  return gap > 0 ? a + Math.log1p(Math.exp(-gap)) : b + Math.log1p(Math.exp(gap));
}
