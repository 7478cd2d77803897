import { MORNING_LIMITS } from '@surae/shared';
import type { MorningTold } from './leg-course.ts';
import { usualMorning } from './usual-morning.ts';

/** For how many days a leg has been steady: those of which it is known, and those that it may be at most. */
export interface DaysSteady {
  readonly low: number;
  /** endless where no day that was not steady is known [d] */
  readonly high: number;
}

/** Days that are looked back. */
const back = 60;

/** Whether a day was steady; null is not known. */
function wasSteady(
  on: number,
  mornings: ReadonlyMap<number, MorningTold>,
  pains: ReadonlyMap<number, number | null>,
  painLimit: number,
): boolean | null {
  const told = mornings.get(on)?.pain ?? null;
  const usual = usualMorning(mornings, on, 'pain');
  const isOver = told !== null && told > MORNING_LIMITS.easedAbove.value;
  const rise = told === null || usual === null ? null : told - usual;
  const morning = isOver ? false : rise === null ? null : rise <= MORNING_LIMITS.holdRise.value;
  const pain = pains.get(on);
  const loaded = pain === undefined ? true : pain === null ? null : pain <= painLimit;
  if (morning === false || loaded === false) return false;
  return morning === null || loaded === null ? null : true;
}

/**
 * For how many days up to today every morning was about as usual, and what was logged kept to its limit. A morning that was not told
 * may have been either; that of today need not be told yet.
 *
 * @param mornings - by day number [-]
 * @param pains - worst pain of sessions and runs by day number; null was not told [1]
 * @param today - day number [d]
 * @param painLimit - pain in a session that is too much when it is more, of 10 [1]
 * @returns bounds [d]
 *
 * Source: ours; the limits are those of a step
 */
export function daysSteady(
  mornings: ReadonlyMap<number, MorningTold>,
  pains: ReadonlyMap<number, number | null>,
  today: number,
  painLimit: number,
): DaysSteady {
  const first = wasSteady(today, mornings, pains, painLimit) === null ? 1 : 0;
  let low: number | null = null;
  for (let days = first; days < back; days++) {
    const was = wasSteady(today - days, mornings, pains, painLimit);
    if (was === false) return { low: low ?? days - first, high: days };
    if (was === null) low ??= days - first;
  }
  return { low: low ?? back - first, high: Number.POSITIVE_INFINITY };
}
