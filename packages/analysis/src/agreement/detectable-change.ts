import { requireRange } from '../check.ts';
import { normalQuantile } from '../signal/normal.ts';
import type { Bounded } from './bounds.ts';

/** What a change between two tests means: clearly more than the error of two tests, perhaps, or not to be told from it. */
export type ChangeVerdict = 'yes' | 'possible' | 'cannot_tell';

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

/**
 * Change in units of the standard error of a difference of two tests.
 *
 * @param before - value of the first test [unit of before]
 * @param after - value of the second test [unit of before]
 * @param sem - standard error of measurement, > 0 [unit of before]
 * @returns the index; beyond 1.96 either way a change is called reliable [-]
 * @throws {@link InputError} `out-of-range` when a value is not finite or the standard error not above 0
 *
 * Source: Jacobson & Truax (1991), J Consult Clin Psychol 59:12-19
 */
export function reliableChangeIndex(before: number, after: number, sem: number): number {
  requireRange(sem, sem > 0, 'sem', '> 0');
  requireRange(before, true, 'before', 'a finite number');
  requireRange(after, true, 'after', 'a finite number');
  return (after - before) / (Math.SQRT2 * sem);
}

/**
 * Whether two tests of one person differ by more than measurement error.
 *
 * @param before - value of the first test [unit of before]
 * @param after - value of the second test [unit of before]
 * @param sem - standard error of measurement, > 0 [unit of before]
 * @returns `yes` beyond the detectable change at 95 %, `possible` beyond that at 80 %, else `cannot_tell` [-]
 * @throws {@link InputError} `out-of-range` as {@link reliableChangeIndex}
 *
 * Source: limits of Jacobson & Truax (1991) at 95 %; the zone from 80 % on: common practice, no source
 */
export function changeVerdict(before: number, after: number, sem: number): ChangeVerdict {
  const index = Math.abs(reliableChangeIndex(before, after, sem));
  if (index > normalQuantile(0.975)) return 'yes';
  return index > normalQuantile(0.9) ? 'possible' : 'cannot_tell';
}
