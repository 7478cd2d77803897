import type { NumberBound } from '@surae/shared';
import type { Press } from '../plan/plan-numbers.ts';

/**
 * A number after a press, on the steps between its bounds.
 *
 * @param value - as it is [unit of the number]
 * @param press - so many steps, or to an end [-]
 * @param bound - see {@link NumberBound} [unit of the number]
 * @returns the number, within its bounds [unit of the number]
 *
 * Source: ours
 */
export function steppedNumber(value: number, press: Press, { least, most, by }: NumberBound): number {
  const last = Math.round((most - least) / by);
  const step = Math.round((value - least) / by);
  const to = press === 'least' ? 0 : press === 'most' ? last : step + press;
  // shares such as 0.85 are written as they are read
  return Number((least + by * Math.min(last, Math.max(0, to))).toFixed(6));
}
