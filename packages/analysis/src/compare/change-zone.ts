import { requireRange } from '../check.ts';

/** standard deviations that hold 95 % and 80 % of a normal variable on both sides, as the cited sources round them */
const FOR_95 = 1.96;
const FOR_80 = 1.28;

/** Where a change lies against the usual wobble of a measure. */
export type ChangeZone =
  /** more than the detectable change at 95 % */
  | 'likely-real'
  /** between the detectable changes at 80 % and at 95 % */
  | 'possible'
  /** no more than the detectable change at 80 %: cannot be told from the usual wobble */
  | 'cannot-tell';

/** The changes that are larger than the usual wobble of a measure, and by how much a change exceeds it. */
export interface DetectableChange {
  /** [unit of the error] */
  readonly at95: number;
  /** [unit of the error] */
  readonly at80: number;
  /** the change in standard deviations of a difference of two tests: the reliable change index [-] */
  readonly index: number;
  readonly zone: ChangeZone;
}

/**
 * Detectable changes at 95 % and 80 %, 1.96 sqrt 2 and 1.28 sqrt 2 standard errors of measurement, and the zone of a change
 * among them. The zone is read off the reliable change index, so that both ways of asking give one answer.
 *
 * @param change - later minus earlier value [unit of change]
 * @param standardError - standard error of measurement, > 0 [unit of change]
 * @returns see {@link DetectableChange} [unit of change]
 * @throws {@link InputError} `out-of-range` for an error that is not above 0 or a change that is not finite
 *
 * Source: Weir (2005), J Strength Cond Res 19:231; Jacobson & Truax (1991), J Consult Clin Psychol 59:12
 */
export function changeZone(change: number, standardError: number): DetectableChange {
  requireRange(change, true, 'change', 'a finite number');
  requireRange(standardError, standardError > 0, 'standardError', '> 0');
  const ofDifference = Math.SQRT2 * standardError;
  const index = change / ofDifference;
  const size = Math.abs(index);
  const zone = size > FOR_95 ? 'likely-real' : size > FOR_80 ? 'possible' : 'cannot-tell';
  return { at95: FOR_95 * ofDifference, at80: FOR_80 * ofDifference, index, zone };
}
