import type { Line } from './min-max.ts';

/** The newest stretch whose scatter is told [s]; ours. */
const lastS = 1;

/** Standard deviation of the values of the last second of a line; null where fewer than five came, or none [unit of values]. */
export function liveScatter({ timesS, values }: Line): number | null {
  const fromS = (timesS.at(-1) ?? 0) - lastS;
  const kept = [...values].filter((value, i) => timesS[i]! >= fromS && Number.isFinite(value));
  if (kept.length < 5) return null;
  const mean = kept.reduce((sum, value) => sum + value, 0) / kept.length;
  return Math.sqrt(kept.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (kept.length - 1));
}
