import { samplesBetween } from '../movement-rate.ts';
import { type CriterionFinding, limitFinding, notObserved } from './finding.ts';
import type { SetUnderJudgement } from './subject.ts';

const DEGREES = 180 / Math.PI;

/**
 * Whether the trunk leaned during the rise: the largest change of its pitch from the start of the repetition to its top.
 *
 * @param set - the set [-]
 * @param i - which repetition, from 0 [-]
 * @returns the finding, with the change of pitch [deg]
 *
 * Source: common practice, no source
 */
export function leanFinding(set: SetUnderJudgement, i: number): CriterionFinding {
  const seen = set.seenBy('lean');
  if (seen === 'not-observed') return notObserved('placement');
  const threshold = set.parameters.leanMost.value;
  if (threshold === null) return notObserved('not-asked');
  const { motion } = set.detection;
  const pitch = motion.trunkPitchRad;
  if (pitch === undefined) return notObserved('no-signal');
  const raise = set.detection.raises[i];
  const { fromIndex, toIndex } = samplesBetween(motion, raise.startS, raise.topS);
  if (toIndex - fromIndex < 2) return notObserved('no-signal');
  let change = 0;
  for (let k = fromIndex; k < toIndex; k++) {
    if (!Number.isFinite(pitch[k])) return notObserved(raise.longestGapS > 0 ? 'gap' : 'no-signal');
    change = Math.max(change, Math.abs(pitch[k] - pitch[fromIndex]));
  }
  const evidence = {
    value: change * DEGREES,
    u: set.settings.leanURad * DEGREES,
    threshold,
    unit: 'deg',
    fromS: raise.startS,
    toS: raise.topS,
  };
  return limitFinding(evidence, 'at-most', seen);
}

/**
 * Whether enough samples are there to judge a repetition; a failure means that it cannot be judged, not that it was poor.
 *
 * @param set - the set [-]
 * @param i - which repetition, from 0 [-]
 * @returns the finding, with the longest stretch without samples [s]
 *
 * Source: common practice, no source
 */
export function gapFinding(set: SetUnderJudgement, i: number): CriterionFinding {
  const seen = set.seenBy('gap');
  if (seen === 'not-observed') return notObserved('placement');
  const threshold = set.parameters.gapMost.value;
  if (threshold === null) return notObserved('not-asked');
  const raise = set.detection.raises[i];
  const evidence = { value: raise.longestGapS, u: 0, threshold, unit: 's', fromS: raise.startS, toS: raise.endS };
  return limitFinding(evidence, 'at-most', seen);
}
