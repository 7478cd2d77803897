import type { CriterionId, EndReason, Protocol } from '@surae/shared';
import type { Placement, Side } from '../trace.ts';

/** What is known about the person and the rig; what is missing is withheld from the results, never assumed. */
export interface Subject {
  /** metatarsal heads to the point of the heel that is measured [m] */
  readonly heelLeverM?: number;
  /** metatarsal heads to the ankle axis [m] */
  readonly ankleLeverM?: number;
  /** elevation of the line metatarsal heads to ankle axis above the foot line [rad] */
  readonly ankleAngleRad?: number;
  readonly bodyMassKg?: number;
  readonly externalMassKg?: number;
  /** load on the knee as a share of body mass; needs the body mass [-] */
  readonly externalMassShare?: number;
  /** length of the string between its base and the heel at rest [m] */
  readonly stringRestLengthM?: number;
}

/** A raise done for practice before the set. */
export interface PracticeRaise {
  readonly heightM: number;
  readonly heightUM: number;
}

/** A fault that a tester marked by hand at a time of the recording. */
export interface TesterMark {
  readonly atS: number;
  readonly criterion: CriterionId;
}

/** What is known about the trial beyond the trace. */
export interface TrialContext {
  readonly endReason?: EndReason;
  /** exertion at the end, 0 to 10 */
  readonly exertion?: number;
  /** peak pain, 0 to 10 */
  readonly painPeak?: number;
  readonly familiarisation?: readonly PracticeRaise[];
  readonly marks?: readonly TesterMark[];
}

/** What one assessment is asked. */
export interface AssessmentRequest {
  readonly placement: Placement;
  readonly side?: Side;
  readonly protocol: Protocol;
  readonly subject: Subject;
  readonly context?: TrialContext;
}
