import type { Bounds } from '@surae/analysis';
import { plain } from './readable-number.ts';

/** Decimals that leave three digits to a spread: an interval is never shown finer than it is known. */
export function decimalsFor(spread: number): number {
  return spread > 0 ? Math.min(Math.max(2 - Math.floor(Math.log10(spread)), 0), 6) : 2;
}

/** A value with its interval in brackets, or with the words that there is none. */
export function interval(value: number, bounds: Bounds | undefined, decimals: number): string {
  if (bounds === undefined) return `${plain(value, decimals)} (no interval)`;
  return `${plain(value, decimals)} (${plain(bounds.low, decimals)} to ${plain(bounds.high, decimals)})`;
}

/** A probability, not finer than anybody needs. */
export function probability(p: number): string {
  return p < 0.001 ? 'p < 0.001' : `p = ${p.toFixed(3)}`;
}
