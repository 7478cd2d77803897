import { ownUncertainty } from '../raises/common-error.ts';
import type { Judgement } from '../raises/criteria/judge-repetition.ts';
import type { SetUnderJudgement } from '../raises/criteria/subject.ts';
import type { Raise } from '../raises/detection.ts';
import { peakPower } from '../raises/power.ts';
import type { AssessedRepetition, Work } from './report.ts';

/** What one repetition of the report is made from. */
export interface RepetitionInputs {
  readonly set: SetUnderJudgement;
  readonly judgement: Judgement;
  readonly work: Work;
  /** power on the grid of the motion; undefined when it cannot be computed [W] */
  readonly powerW: Float64Array | undefined;
  readonly afterEnd: boolean;
}

/** Work of the convention that is the placement's own: the heel, the force under the foot, the rise of the body. */
function ownWork(work: Work): number | null {
  return work.seatedJ ?? work.heelJ ?? work.platformJ ?? work.riseJ;
}

function share(raise: Raise, set: SetUnderJudgement): { percent: number; percentU: number } | undefined {
  const { reference } = set;
  if (reference === undefined || !(reference.heightM > 0) || raise.topInGap) return undefined;
  const ratio = raise.heightM / reference.heightM;
  const ownUM = ownUncertainty(raise.heightUM, raise.heightM, set.commonRelativeU);
  const u = Math.hypot(ownUM, ratio * reference.heightUM) / reference.heightM;
  return { percent: 100 * ratio, percentU: 100 * u };
}

/**
 * One repetition of the report, with everything that is not measured as null.
 *
 * @param i - which repetition, from 0 [-]
 * @param inputs - see {@link RepetitionInputs} [-]
 * @returns the repetition [-]
 *
 * Source: definition
 */
export function assessedRepetition(i: number, inputs: RepetitionInputs): AssessedRepetition {
  const { set, judgement, work, powerW } = inputs;
  const { detection } = set;
  const raise = detection.raises[i];
  const tempo = set.tempo[i];
  const target = set.parameters.cue.value === 'none' ? null : set.parameters.cycleTarget.value;
  const measured = set.heightsKnown && !raise.topInGap;
  const ofHeel = detection.motion.kind === 'heel-height';
  const percent = share(raise, set);
  const joules = ownWork(work);
  const low = raise.lowAfterM;
  return {
    index: i + 1,
    startS: raise.startS,
    startUS: raise.startUS,
    topS: raise.topS,
    topUS: raise.topUS,
    endS: raise.endS,
    endUS: raise.endUS,
    heightM: measured && ofHeel ? raise.heightM : null,
    heightUM: measured && ofHeel ? raise.heightUM : null,
    riseM: measured && !ofHeel ? raise.heightM : null,
    riseUM: measured && !ofHeel ? raise.heightUM : null,
    depthM: set.heightsKnown && low !== undefined ? Math.max(0, -low) : null,
    percentOfReference: percent?.percent ?? null,
    percentOfReferenceU: percent?.percentU ?? null,
    upS: tempo.upS,
    topHoldS: tempo.topHoldS,
    downS: tempo.downS,
    lowS: tempo.lowS ?? null,
    cycleS: tempo.cycleS ?? null,
    periodS: tempo.periodS ?? null,
    beatErrorS: tempo.periodS === undefined || target === null ? null : tempo.periodS - target,
    work,
    meanPowerW: joules === null || !(tempo.upS > 0) ? null : joules / tempo.upS,
    peakPowerW: powerW === undefined ? null : (peakPower(detection.motion, powerW, raise.startS, raise.topS) ?? null),
    ...judgement,
    probability: raise.probability,
    longestGapS: raise.longestGapS,
    afterEnd: inputs.afterEnd,
  };
}
