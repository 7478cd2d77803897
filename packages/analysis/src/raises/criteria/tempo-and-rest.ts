import type { TempoParts } from '../tempo.ts';
import { type CriterionFinding, limitFinding, notObserved, probabilityAbove } from './finding.ts';
import type { SetUnderJudgement } from './subject.ts';

interface Band {
  readonly lowS: number;
  readonly highS: number;
}

function outside(part: TempoParts, band: Band): number {
  if (part.periodS === undefined || part.periodUS === undefined) return 0;
  const u = part.periodUS;
  if (!(u > 0)) return part.periodS < band.lowS || part.periodS > band.highS ? 1 : 0;
  return 1 - probabilityAbove(part.periodS, band.lowS, u) + probabilityAbove(part.periodS, band.highS, u);
}

/**
 * Whether a repetition is on the beat: it is off when its period, and those of the repetitions before it as many as the
 * protocol asks for in a row, lie outside the band around the beat. One late repetition alone is none.
 *
 * @param set - the set [-]
 * @param i - which repetition, from 0 [-]
 * @returns the finding, with the period and the nearer edge of the band [s]
 *
 * Source: common practice, no source
 */
export function tempoFinding(set: SetUnderJudgement, i: number): CriterionFinding {
  const seen = set.seenBy('tempo');
  if (seen === 'not-observed') return notObserved('placement');
  const { cue, cycleTarget, cycleTolerance, cycleFaultsInARow } = set.parameters;
  const target = cycleTarget.value;
  if (cue.value === 'none' || target === null || cycleTolerance.value === null) return notObserved('not-asked');
  const { periodS, periodUS } = set.tempo[i];
  if (periodS === undefined || periodUS === undefined) return notObserved('first-repetition');
  const band = { lowS: target * (1 - cycleTolerance.value), highS: target * (1 + cycleTolerance.value) };
  const row = Math.max(1, cycleFaultsInARow.value ?? 1);
  const off = (k: number): boolean => {
    const period = set.tempo[k]?.periodS;
    return period !== undefined && (period < band.lowS - 1e-9 || period > band.highS + 1e-9);
  };
  let failed = true;
  let failing = 1;
  for (let k = i; k > i - row; k--) {
    failed = failed && k >= 0 && off(k);
    failing *= k >= 0 ? outside(set.tempo[k], band) : 0;
  }
  const threshold = Math.abs(periodS - band.lowS) < Math.abs(periodS - band.highS) ? band.lowS : band.highS;
  const raises = set.detection.raises;
  const near = periodUS > 0 && Math.abs(periodS - threshold) <= periodUS;
  return {
    result: failed ? 'fail' : 'pass',
    seen,
    // near the edge matters only where it could change the result: 0.16 is the normal tail beyond one uncertainty
    borderline: near && (failed || failing > 0.16),
    probability: 1 - failing,
    evidence: {
      value: periodS,
      u: periodUS,
      threshold,
      unit: 's',
      fromS: raises[i - 1].topS,
      toS: raises[i].topS,
    },
    reason: null,
  };
}

/**
 * Whether a repetition was followed by a rest at the bottom before the next one.
 *
 * @param set - the set [-]
 * @param i - which repetition, from 0 [-]
 * @returns the finding, with the time at the bottom [s]
 *
 * Source: common practice, no source
 */
export function restFinding(set: SetUnderJudgement, i: number): CriterionFinding {
  const seen = set.seenBy('rest');
  if (seen === 'not-observed') return notObserved('placement');
  const threshold = set.parameters.lowDwellMost.value;
  if (threshold === null || set.parameters.cue.value === 'none') return notObserved('not-asked');
  const { lowS } = set.tempo[i];
  if (lowS === undefined) return notObserved('last-repetition');
  const raise = set.detection.raises[i];
  const next = set.detection.raises[i + 1];
  const u = Math.hypot(raise.endUS, next.startUS);
  return limitFinding({ value: lowS, u, threshold, unit: 's', fromS: raise.endS, toS: next.startS }, 'at-most', seen);
}
