import { boundedDeviation } from '../agreement/measurement-error.ts';
import { agreementDefaults } from '../assess/defaults/agreement.ts';
import { requireRange } from '../check.ts';
import type { OwnReliability } from './reliability-choice.ts';

/** Tests that a clinic repeated: every person on every day. */
export interface RepeatedTests {
  /** root of the residual mean square, > 0 [any unit] */
  readonly standardError: number;
  /** 2 or more [-] */
  readonly people: number;
  /** 2 or more [-] */
  readonly days: number;
}

/**
 * How much a standard error of measurement is worth that somebody tells of repeated tests: the pairs of tests behind it, and
 * the bound that is used in its place while they are few.
 *
 * @param tests - the error, people and days [unit of the error]
 * @returns pairs and the upper bound of the one-sided 80 % interval [unit of the error]
 * @throws {@link InputError} `out-of-range` for an error that is not above 0, or fewer than 2 people or days
 *
 * Source: residual degrees of freedom (people - 1)(days - 1): Weir (2005), J Strength Cond Res 19:231; the bound by chi-square
 */
export function worthOfRepeated({
  standardError,
  people,
  days,
}: RepeatedTests): Pick<OwnReliability, 'standardErrorUpper80' | 'pairs'> {
  requireRange(standardError, standardError > 0, 'standardError', '> 0');
  requireRange(people, Number.isInteger(people) && people >= 2, 'people', 'a whole number from 2');
  requireRange(days, Number.isInteger(days) && days >= 2, 'days', 'a whole number from 2');
  const df = (people - 1) * (days - 1);
  // the upper bound of a two-sided interval at 2 p - 1 is the one-sided bound at p
  const { high } = boundedDeviation(standardError, df, 2 * agreementDefaults.usable.cautiousLevel - 1);
  return { standardErrorUpper80: high, pairs: df + 1 };
}
