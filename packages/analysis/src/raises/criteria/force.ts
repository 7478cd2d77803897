import type { Motion } from '../detection.ts';
import { samplesBetween } from '../movement-rate.ts';
import { type CriterionFinding, limitFinding, notObserved } from './finding.ts';
import type { SetUnderJudgement } from './subject.ts';

/** Force over a span [N]. */
export interface ForceSummary {
  readonly mean: number;
  readonly least: number;
  readonly most: number;
  readonly sd: number;
  readonly count: number;
}

/**
 * Force under the foot between two instants: mean, extremes and spread.
 *
 * @param motion - with or without force on its grid [N]
 * @param fromS - start [s]
 * @param toS - end [s]
 * @returns the summary; undefined without force, with a sample missing or with fewer than two [N]
 *
 * Source: definition
 */
export function forceBetween(motion: Motion, fromS: number, toS: number): ForceSummary | undefined {
  const { forceN } = motion;
  if (forceN === undefined) return undefined;
  const { fromIndex, toIndex } = samplesBetween(motion, fromS, toS);
  const count = toIndex - fromIndex;
  if (count < 2) return undefined;
  let sum = 0;
  let squares = 0;
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let k = fromIndex; k < toIndex; k++) {
    sum += forceN[k];
    least = Math.min(least, forceN[k]);
    most = Math.max(most, forceN[k]);
  }
  const mean = sum / count;
  for (let k = fromIndex; k < toIndex; k++) squares += (forceN[k] - mean) ** 2;
  if (!Number.isFinite(mean)) return undefined;
  return { mean, least, most, sd: Math.sqrt(squares / (count - 1)), count };
}

/**
 * Whether the hands carried weight: the mean force at the top lies below body weight by more than the share allowed. Where
 * the hold at the top is short the mean over the whole repetition is taken instead, because there the body starts and
 * ends at rest and its own acceleration averages out.
 *
 * @param set - the set [-]
 * @param i - which repetition, from 0 [-]
 * @returns the finding, with the mean force as a share of body weight [-]
 *
 * Source: common practice, no source; mean over the repetition: Newton's second law
 */
export function handsFinding(set: SetUnderJudgement, i: number): CriterionFinding {
  const seen = set.seenBy('hands');
  if (seen === 'not-observed') return notObserved('placement');
  const { bodyWeightN, bodyWeightUN, motion } = set.detection;
  const { handsFraction, handsLeast } = set.parameters;
  if (handsFraction.value === null) return notObserved('not-asked');
  if (bodyWeightN === undefined || !(bodyWeightN > 0)) return notObserved('no-signal');
  const raise = set.detection.raises[i];
  const leastS = handsLeast.value ?? set.settings.plateauLeastS;
  const held = raise.highToS - raise.highFromS >= leastS;
  const fromS = held ? raise.highFromS : raise.startS;
  const toS = held ? raise.highToS : raise.endS;
  const force = forceBetween(motion, fromS, toS);
  if (force === undefined) return notObserved(raise.longestGapS > 0 ? 'gap' : 'no-signal');
  const value = force.mean / bodyWeightN;
  // neighbouring samples share their sway, so fewer count as independent
  const independent = Math.max(1, (toS - fromS) / set.settings.swayS);
  const u = Math.hypot(value * (bodyWeightUN ?? 0), force.sd / Math.sqrt(independent)) / bodyWeightN;
  const evidence = { value, u, threshold: 1 - handsFraction.value, unit: '1', fromS, toS };
  return limitFinding(evidence, 'at-least', seen);
}

/**
 * Whether the knee helped. Force alone shows one of the signs only, a dip before the rise or a peak during it, so that
 * this finding never passes and never fails: a sign asks for a second look. The peak is a sign at a slow tempo only.
 *
 * @param set - the set [-]
 * @param i - which repetition, from 0 [-]
 * @returns not observed, borderline when a sign was seen, with the dip or the peak as a share of body weight [-]
 *
 * Source: common practice, no source
 */
export function kneeFinding(set: SetUnderJudgement, i: number): CriterionFinding {
  if (set.seenBy('knee') === 'not-observed') return notObserved('placement');
  const { bodyWeightN, bodyWeightUN, motion } = set.detection;
  const { kneeDipFraction, kneePeakFraction } = set.parameters;
  if (kneeDipFraction.value === null || kneePeakFraction.value === null) return notObserved('not-asked');
  if (bodyWeightN === undefined || !(bodyWeightN > 0)) return notObserved('no-signal');
  const raise = set.detection.raises[i];
  const dipFromS = raise.startS - set.settings.kneeDipWindowS;
  const before = forceBetween(motion, dipFromS, raise.startS);
  const during = forceBetween(motion, raise.startS, raise.topS);
  if (before === undefined || during === undefined) return notObserved(raise.longestGapS > 0 ? 'gap' : 'no-signal');
  const u = (bodyWeightUN ?? 0) / bodyWeightN + set.settings.forceRelativeU;
  const dip = before.least / bodyWeightN;
  const peak = during.most / bodyWeightN;
  // at a quick beat a plain rise alone reaches that peak
  const slow = (set.tempo[i].periodS ?? 0) >= set.settings.kneePeakPeriodS;
  if (slow && peak > kneePeakFraction.value) {
    const evidence = {
      value: peak,
      u,
      threshold: kneePeakFraction.value,
      unit: '1',
      fromS: raise.startS,
      toS: raise.topS,
    };
    return notObserved('one-sign-of-several', evidence, true);
  }
  const evidence = {
    value: dip,
    u,
    threshold: 1 - kneeDipFraction.value,
    unit: '1',
    fromS: dipFromS,
    toS: raise.startS,
  };
  return notObserved('one-sign-of-several', evidence, dip < 1 - kneeDipFraction.value);
}
