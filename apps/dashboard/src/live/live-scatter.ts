import type { Line } from './min-max.ts';
import { scatter } from './scatter.ts';

/** The newest stretch whose scatter is told [s]; ours. */
const lastS = 1;

/** Standard deviation of the values of the last second of a line; null where fewer than five came, or none [unit of values]. */
export function liveScatter({ timesS, values }: Line): number | null {
  const fromS = (timesS.at(-1) ?? 0) - lastS;
  const kept = [...values].filter((value, i) => timesS[i]! >= fromS && Number.isFinite(value));
  return scatter(kept, 5);
}
