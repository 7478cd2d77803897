import { ownUncertainty } from '../common-error.ts';
import { type CriterionFinding, limitFinding, notObserved } from './finding.ts';
import type { SetUnderJudgement } from './subject.ts';

/**
 * Whether a repetition reaches the share of the reference height that the protocol asks for.
 *
 * @param set - the set [-]
 * @param i - which repetition, from 0 [-]
 * @returns the finding, with the height as a share of the reference [-]
 *
 * Source: common practice, no source; thresholds in use are listed in Hébert-Losier (2009), J Sci Med Sport 12:594
 */
export function heightFinding(set: SetUnderJudgement, i: number): CriterionFinding {
  const seen = set.seenBy('height');
  if (seen === 'not-observed') return notObserved('placement');
  const share = set.parameters.heightFraction.value;
  if (share === null) return notObserved('not-asked');
  if (set.reference === undefined || !(set.reference.heightM > 0)) return notObserved('no-reference');
  const raise = set.detection.raises[i];
  if (raise.topInGap) return notObserved('gap');
  const { heightM: referenceM, heightUM: referenceUM } = set.reference;
  const value = raise.heightM / referenceM;
  // u of h - k H, in shares of H
  const ownUM = ownUncertainty(raise.heightUM, raise.heightM, set.commonRelativeU);
  const u = Math.hypot(ownUM, share * referenceUM) / referenceM;
  const evidence = { value, u, threshold: share, unit: '1', fromS: raise.highFromS, toS: raise.highToS };
  return limitFinding(evidence, 'at-least', seen);
}

/**
 * Whether the heel came back down after a repetition: its bottom lies no higher than the height, or the share of the
 * reference, that the protocol allows, whichever is more.
 *
 * @param set - the set [-]
 * @param i - which repetition, from 0 [-]
 * @returns the finding, with the level of the bottom in metres, or as a share of the reference where heights are known only in proportion [m]
 *
 * Source: common practice, no source
 */
export function returnFinding(set: SetUnderJudgement, i: number): CriterionFinding {
  const seen = set.seenBy('return');
  if (seen === 'not-observed') return notObserved('placement');
  const raise = set.detection.raises[i];
  const { returnHeight, returnFraction } = set.parameters;
  if (returnHeight.value === null && returnFraction.value === null) return notObserved('not-asked');
  if (raise.lowAfterM === undefined) return notObserved('no-signal');
  const referenceM = set.reference?.heightM;
  const window = { fromS: raise.endS, toS: raise.endS + (set.tempo[i].lowS ?? 0) };
  const u = Math.hypot(set.detection.stillSdM, set.settings.bottomUM);
  if (!set.heightsKnown) {
    if (referenceM === undefined || returnFraction.value === null) return notObserved('no-reference');
    const evidence = {
      value: raise.lowAfterM / referenceM,
      u: u / referenceM,
      threshold: returnFraction.value,
      unit: '1',
    };
    return limitFinding({ ...evidence, ...window }, 'at-most', seen);
  }
  const threshold = Math.max(returnHeight.value ?? 0, (returnFraction.value ?? 0) * (referenceM ?? 0));
  return limitFinding({ value: raise.lowAfterM, u, threshold, unit: 'm', ...window }, 'at-most', seen);
}
