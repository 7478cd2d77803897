import { samplesBetween } from '../movement-rate.ts';
import { type CriterionFinding, limitFinding, notObserved, probabilityAbove } from './finding.ts';
import { forceBetween } from './force.ts';
import type { SetUnderJudgement } from './subject.ts';

/** Downward speed at which the heel last came through the level of return before the end of repetition i. */
function contactSpeed(set: SetUnderJudgement, i: number): number | undefined {
  const raise = set.detection.raises[i];
  const { motion } = set.detection;
  const { returnHeight, returnFraction } = set.parameters;
  const referenceM = set.reference?.heightM ?? 0;
  const levelM = Math.max(set.heightsKnown ? (returnHeight.value ?? 0) : 0, (returnFraction.value ?? 0) * referenceM);
  const { fromIndex, toIndex } = samplesBetween(motion, raise.highToS, raise.endS);
  let at: number | undefined;
  for (let k = fromIndex + 1; k < toIndex; k++) {
    if (motion.heightM[k - 1] > levelM && motion.heightM[k] <= levelM) at = k;
  }
  // an incomplete return never reaches the level: its slow end is the contact
  at ??= toIndex - 1;
  if (at < 0 || at >= set.rate.velocityMps.length) return undefined;
  // the level is met between two samples; so near the bottom the later one is already slowed down
  const speed = -Math.min(set.rate.velocityMps[at], set.rate.velocityMps[Math.max(at - 1, 0)]);
  return Number.isFinite(speed) ? Math.max(0, speed) : undefined;
}

/**
 * Whether a repetition was helped by a bounce off the floor: the heel met the floor before it faster than allowed and the
 * rise began at once, or the force under the foot spiked there.
 *
 * @param set - the set [-]
 * @param i - which repetition, from 0 [-]
 * @returns the finding, with the speed at contact, or the spike as a share of body weight [m/s]
 *
 * Source: common practice, no source
 */
export function bounceFinding(set: SetUnderJudgement, i: number): CriterionFinding {
  const seen = set.seenBy('bounce');
  if (seen === 'not-observed') return notObserved('placement');
  const { bounceSpeed, bounceDwell, bounceForceFraction } = set.parameters;
  if (bounceSpeed.value === null || bounceDwell.value === null) return notObserved('not-asked');
  if (i === 0) return notObserved('first-repetition');
  const before = set.detection.raises[i - 1];
  const raise = set.detection.raises[i];
  const { bodyWeightN, motion } = set.detection;
  if (bodyWeightN !== undefined && bodyWeightN > 0 && bounceForceFraction.value !== null) {
    const fromS = before.endS - set.settings.impactBeforeS;
    const toS = before.endS + set.settings.impactAfterS;
    const force = forceBetween(motion, fromS, toS);
    if (force !== undefined && force.most > bounceForceFraction.value * bodyWeightN) {
      const value = force.most / bodyWeightN;
      const u = value * set.settings.forceRelativeU;
      return limitFinding({ value, u, threshold: bounceForceFraction.value, unit: '1', fromS, toS }, 'at-most', seen);
    }
  }
  if (!set.heightsKnown) return notObserved('no-signal');
  const speed = contactSpeed(set, i - 1);
  if (speed === undefined) return notObserved(before.longestGapS > 0 ? 'gap' : 'no-signal');
  const u = set.settings.speedRelativeU * speed;
  const dwellS = Math.max(0, raise.startS - before.endS);
  const dwellU = Math.hypot(before.endUS, raise.startUS);
  const fast = speed > bounceSpeed.value;
  const quick = dwellS < bounceDwell.value;
  const probabilityBounced =
    probabilityAbove(speed, bounceSpeed.value, u) * (1 - probabilityAbove(dwellS, bounceDwell.value, dwellU));
  return {
    result: fast && quick ? 'fail' : 'pass',
    seen,
    // within about one standard uncertainty of either side: 0.16 is the normal tail beyond one
    borderline: probabilityBounced > 0.16 && probabilityBounced < 0.84,
    probability: 1 - probabilityBounced,
    evidence: { value: speed, u, threshold: bounceSpeed.value, unit: 'm/s', fromS: before.highToS, toS: raise.startS },
    reason: null,
  };
}
