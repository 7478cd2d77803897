import { MORNING_LIMITS, STIFFNESS_LIMITS } from '@surae/shared';
import type { SessionResponse } from './session-response.ts';

/** How many days were too much: known ones, and those that may have been. */
export interface HardDays {
  readonly low: number;
  readonly high: number;
}

/** Whether a day was too much; null is not known. */
function wasHard(
  { session, morningRise, stiffnessRise, stiffnessOverDouble }: SessionResponse,
  limit: number,
): boolean | null {
  const isDoubled =
    stiffnessRise === null || stiffnessOverDouble === null
      ? null
      : stiffnessRise > STIFFNESS_LIMITS.doubledOver.value && stiffnessOverDouble >= 0;
  const signs = [
    session.painDuring === null ? null : session.painDuring > limit,
    session.painAfter === null ? null : session.painAfter > limit,
    morningRise === null ? null : morningRise > MORNING_LIMITS.easedRise.value,
    isDoubled,
  ];
  if (signs.includes(true)) return true;
  return signs.includes(null) ? null : false;
}

/**
 * Days on which a session, or the morning after it, was too much. What was not told may have been: it is in the upper bound.
 *
 * @param responses - of the sessions of the days that are looked at [-]
 * @param unlogged - planned sessions of these days without a log [-]
 * @param limit - pain in a session, or in the hours after it, that is too much when it is more, of 10 [1]
 * @returns bounds of the count [-]
 *
 * Source: ours; the signs are those of a reduced dose
 */
export function hardDays(responses: readonly SessionResponse[], unlogged: number, limit: number): HardDays {
  const each = responses.map((one) => wasHard(one, limit));
  const low = each.filter((one) => one === true).length;
  return { low, high: low + each.filter((one) => one === null).length + unlogged };
}
