import { COMPARISON_RULES } from '@surae/shared';
import type { Bounded } from '../agreement/bounds.ts';

/** What may make the sides differ without harm; null is not known. */
export interface SideCircumstances {
  /** a sport that loads one leg more */
  readonly oneSidedSport: boolean | null;
  readonly legLengthRaise: boolean | null;
  /** [a] */
  readonly ageYears: number | null;
  /** the ratio rests on a leg with an earlier injury that a clinician confirmed; left out is no such leg */
  readonly confirmedInjury?: boolean;
  /** a force was counted by a calibration whose error is not known; left out is none */
  readonly scaleNotKnown?: boolean;
}

export type SideCaution =
  /** goes with every ratio: tendons are often affected on both sides */
  | 'other-side-may-be-low'
  /** equal legs are within the interval */
  | 'interval-holds-equal'
  /** the leg that is compared with had an earlier injury, long ago, and a clinician confirmed it */
  | 'earlier-injury-confirmed'
  /** a sport that loads one leg more */
  | 'one-sided-sport'
  /** a raise for leg length is worn */
  | 'leg-length-raise'
  /** under 18 years */
  | 'under-18'
  /** sport, raise or age was not asked */
  | 'not-asked'
  /** the error of the calibration of a sensor is in no figure */
  | 'scale-not-known';

/**
 * What goes with a ratio of the sides, in the order in which it is shown.
 *
 * @param ratio - the ratio with its interval [-]
 * @param circumstances - what may make the sides differ; null is not known [-]
 * @returns codes; the first is always there [-]
 *
 * Source: common practice, no source; a difference must exceed what a side differs from itself: Exell, as quoted by Bishop (2016),
 * Strength Cond J 38(6):27
 */
export function sideCautions(ratio: Bounded, circumstances: SideCircumstances): readonly SideCaution[] {
  const { oneSidedSport, legLengthRaise, ageYears, confirmedInjury, scaleNotKnown } = circumstances;
  const age = Number.isFinite(ageYears) ? ageYears : null;
  const cautions: readonly (readonly [SideCaution, boolean])[] = [
    ['other-side-may-be-low', true],
    ['interval-holds-equal', ratio.low <= 1 && ratio.high >= 1],
    ['earlier-injury-confirmed', confirmedInjury === true],
    ['one-sided-sport', oneSidedSport === true],
    ['leg-length-raise', legLengthRaise === true],
    ['under-18', age !== null && age < COMPARISON_RULES.adultFrom.value],
    ['not-asked', typeof oneSidedSport !== 'boolean' || typeof legLengthRaise !== 'boolean' || age === null],
    ['scale-not-known', scaleNotKnown === true],
  ];
  return cautions.filter(([, holds]) => holds).map(([caution]) => caution);
}
