import { COMPARISON_RULES } from '@surae/shared';
import type { EarlierInjury } from './pair.ts';

/** What an earlier injury of the leg that is compared with does to a ratio. */
export type InjuryStanding =
  /** there was none */
  | 'none'
  /** it lies long enough back, and a clinician confirmed that the leg may be compared with: a caution goes with the ratio */
  | 'confirmed'
  /** it lies long enough back, and nobody confirmed it */
  | 'not-confirmed'
  /** it is recent, or when it was is not known */
  | 'recent'
  /** nobody asked */
  | 'not-asked';

/**
 * What an earlier injury of the leg that is compared with does to a ratio: it stands against one unless it lies more than twelve
 * months back and a clinician confirms the leg.
 *
 * @param injury - of that leg; true is one of which no more is known, null was not asked [mo, -]
 * @returns see {@link InjuryStanding} [-]
 *
 * Source: common practice, no source
 */
export function injuryStanding(injury: EarlierInjury | boolean | null): InjuryStanding {
  if (injury === false) return 'none';
  if (injury === true) return 'recent';
  // what comes from a file may lack the answer altogether
  if (typeof injury !== 'object' || injury === null) return 'not-asked';
  const { monthsAgo, confirmed } = injury;
  const isOld = monthsAgo !== null && Number.isFinite(monthsAgo) && monthsAgo > COMPARISON_RULES.injuryMonthsOver.value;
  if (!isOld) return 'recent';
  return confirmed === true ? 'confirmed' : 'not-confirmed';
}
