import { requireRange } from '../check.ts';
import { normalQuantile } from '../signal/normal.ts';
import type { Bounded } from './bounds.ts';

/**
 * Change between two single tests that measurement error alone exceeds with probability 1 - level: z sqrt 2 SEM. It says nothing
 * about whether such a change matters to anybody.
 *
 * @param sem - standard error of measurement with its interval [unit of sem]
 * @param level - such as 0.95, 0.90 or 0.80 [-]
 * @returns detectable change with the interval that the standard error hands on [unit of sem]
 * @throws {@link InputError} `out-of-range` when the level is not between 0 and 1
 *
 * Source: Weir (2005), J Strength Cond Res 19:231-240
 */
export function detectableChange(sem: Bounded, level: number): Bounded {
  requireRange(level, level > 0 && level < 1, 'level', '0 < level < 1');
  const factor = normalQuantile((1 + level) / 2) * Math.SQRT2;
  return { value: factor * sem.value, low: factor * sem.low, high: factor * sem.high };
}
