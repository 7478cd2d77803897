import { normalCdf } from '../../signal/normal.ts';

/** A verdict in three values; none of them is ever implied by silence. */
export type Verdict = 'yes' | 'no' | 'cannot_tell';

export type CriterionResult = 'pass' | 'fail' | 'not_observed';

/** Why a criterion was not observed. */
export type NotObservedReason =
  /** the sensor placement cannot see it */
  | 'placement'
  /** the placement could see it, but this trace has no usable signal for it here */
  | 'no-signal'
  /** samples are missing where it is judged */
  | 'gap'
  /** there is no earlier repetition to time this one against */
  | 'first-repetition'
  /** no repetition follows that could be rested before */
  | 'last-repetition'
  /** the protocol gives no beat or sets no limit */
  | 'not-asked'
  /** nothing to hold the height against */
  | 'no-reference'
  /** one of the signs that are needed was seen: look at it again */
  | 'one-sign-of-several';

/** The figure behind a result, where on the recording it was taken, and what it was held against. */
export interface Evidence {
  readonly value: number;
  /** standard uncertainty of the value, in the same unit */
  readonly u: number;
  readonly threshold: number;
  readonly unit: string;
  readonly fromS: number;
  readonly toS: number;
}

/** One criterion on one repetition. */
export interface CriterionFinding {
  readonly result: CriterionResult;
  readonly seen: 'measured' | 'inferred' | 'not-observed' | 'tester';
  /** the value lies within one standard uncertainty of the threshold, or a sign asks for a second look */
  readonly borderline: boolean;
  /** probability that the criterion is met; null where not observed */
  readonly probability: number | null;
  readonly evidence: Evidence | null;
  readonly reason: NotObservedReason | null;
}

/**
 * Probability that a measured value lies above a threshold when its error is normal.
 *
 * @param value - the measured value [unit of value]
 * @param threshold - what it is held against [unit of value]
 * @param u - standard uncertainty of the value, >= 0; with 0 the answer is 1 from the threshold on, 0 below [unit of value]
 * @returns probability, 0 to 1 [-]
 *
 * Source: definition
 */
export function probabilityAbove(value: number, threshold: number, u: number): number {
  if (!(u > 0)) return value >= threshold ? 1 : 0;
  return normalCdf(Math.min(Math.max((value - threshold) / u, -37), 37));
}

/**
 * Finding on a value that must reach, or must not exceed, a threshold; a value on the threshold passes.
 *
 * @param evidence - the value with its uncertainty, the threshold and where it was taken [-]
 * @param sense - whether the value must be at least or at most the threshold [-]
 * @param seen - how far the placement sees it [-]
 * @returns the finding [-]
 *
 * Source: definition
 */
export function limitFinding(
  evidence: Evidence,
  sense: 'at-least' | 'at-most',
  seen: 'measured' | 'inferred',
): CriterionFinding {
  const { value, threshold, u } = evidence;
  // a figure that is equal in arithmetic may miss the threshold by the last bit
  const slack = 1e-12 * Math.max(Math.abs(value), Math.abs(threshold));
  const met = sense === 'at-least' ? value >= threshold - slack : value <= threshold + slack;
  const probability =
    u > 0
      ? sense === 'at-least'
        ? probabilityAbove(value, threshold, u)
        : probabilityAbove(threshold, value, u)
      : Number(met);
  return {
    result: met ? 'pass' : 'fail',
    seen,
    borderline: u > 0 && Math.abs(value - threshold) <= u,
    probability,
    evidence,
    reason: null,
  };
}

/**
 * Finding that a criterion could not be seen, which is never a pass.
 *
 * @param reason - why [-]
 * @param evidence - a figure that was seen all the same; null when there is none [-]
 * @param borderline - whether what was seen asks for a second look [-]
 * @returns the finding [-]
 *
 * Source: definition
 */
export function notObserved(
  reason: NotObservedReason,
  evidence: Evidence | null = null,
  borderline = false,
): CriterionFinding {
  return { result: 'not_observed', seen: 'not-observed', borderline, probability: null, evidence, reason };
}
