import type { ItemTrace } from '../../apps/dashboard/src/study/item-trace.ts';

/** A line of so many even raises of 10 cm, one every two seconds with its top at 1 s, 3 s and so on, ten samples a second. */
export function raisedLine(raises: number, differing: Partial<ItemTrace> = {}): ItemTrace {
  const timesS = Float64Array.from({ length: 20 * raises + 1 }, (_, at) => at / 10);
  const values = timesS.map((timeS) => 5 - 5 * Math.cos(Math.PI * timeS));
  return { label: 'Height', unit: 'cm', timesS, values, decimals: 1, ...differing };
}
