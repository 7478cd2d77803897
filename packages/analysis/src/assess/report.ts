import type { CriterionId, EndReason, FaultKind, ReferenceRule } from '@surae/shared';
import type { Issue } from '../issue.ts';
import type { CriterionFinding, Verdict } from '../raises/criteria/finding.ts';
import type { Doubtful, Motion } from '../raises/detection.ts';
import type { HeightFade } from '../raises/fatigue.ts';
import type { Estimate } from '../raises/slope-estimate.ts';
import type { SetTempo } from '../raises/tempo.ts';
import type { Interval } from '../signal/intervals.ts';
import type { Placement, Side } from '../trace.ts';

/** Mechanical work of one repetition or of a set under each named convention; null where it cannot be computed [J]. */
export interface Work {
  /** (m + m_e) g h, h the height of the heel */
  readonly heelJ: number | null;
  readonly heelUJ: number | null;
  /** (m + m_e) g dz, dz the rise of the ankle by the model of the foot lever */
  readonly ankleJ: number | null;
  readonly ankleUJ: number | null;
  /** positive part of the integral of force times velocity over the rise */
  readonly platformJ: number | null;
  readonly platformUJ: number | null;
  /** (m + m_e) g dz, dz the measured rise of the body */
  readonly riseJ: number | null;
  readonly riseUJ: number | null;
  /** m_e g dz, seated: m_e the load on the knee, dz the rise of the knee by the model of the foot lever */
  readonly seatedJ: number | null;
  readonly seatedUJ: number | null;
}

/** One attempted repetition with its measures and verdict. Standard uncertainties end in U. */
export interface AssessedRepetition {
  /** from 1 */
  readonly index: number;
  readonly startS: number | null;
  readonly startUS: number | null;
  readonly topS: number;
  readonly topUS: number;
  readonly endS: number | null;
  readonly endUS: number | null;
  /** height of the heel, placements heel and foot; null where the lever is unknown or the top lies in a gap [m] */
  readonly heightM: number | null;
  readonly heightUM: number | null;
  /** rise of the body, placements trunk and platform [m] */
  readonly riseM: number | null;
  readonly riseUM: number | null;
  /** bottom after this repetition below the level of rest, where it is lower [m] */
  readonly depthM: number | null;
  readonly percentOfReference: number | null;
  readonly percentOfReferenceU: number | null;
  /** leaving the bottom to reaching the hold at the top [s] */
  readonly upS: number | null;
  readonly topHoldS: number | null;
  readonly downS: number | null;
  /** at the bottom until the next repetition starts; null after the last [s] */
  readonly lowS: number | null;
  /** start to next start; null for the last [s] */
  readonly cycleS: number | null;
  /** top of the repetition before to this top; null for the first [s] */
  readonly periodS: number | null;
  /** period minus the beat of the protocol [s] */
  readonly beatErrorS: number | null;
  readonly work: Work;
  readonly meanPowerW: number | null;
  readonly peakPowerW: number | null;
  readonly criteria: Readonly<Record<CriterionId, CriterionFinding>>;
  /** first failing criterion in the fixed order */
  readonly headline: CriterionId | null;
  /** all criteria that could be judged pass at face value */
  readonly passes: boolean;
  readonly valid: Verdict;
  /** probability that every criterion that could be judged is met; null when the repetition cannot be judged */
  readonly probabilityValid: number | null;
  readonly borderline: boolean;
  /** probability that this was a repetition at all */
  readonly probability: number;
  readonly longestGapS: number;
  /** comes after the end of the test by the end rule or the protocol's limit */
  readonly afterEnd: boolean;
}

/** How many, and within which 95 % bounds. */
export interface Count {
  readonly attempted: number;
  /** repetitions that pass at face value, wherever they are */
  readonly valid: number;
  /** repetitions that pass at face value before the end of the test */
  readonly scored: number;
  readonly borderline: number;
  readonly cannotTell: number;
  /** bounds of the attempted count */
  readonly low: number;
  readonly high: number;
  readonly validLow: number;
  readonly validHigh: number;
  readonly scoredLow: number;
  readonly scoredHigh: number;
  /** the score is a lower bound: the protocol's cap was reached */
  readonly censored: boolean;
}

/** The height or rise that each repetition is held against. */
export interface Reference {
  readonly rule: ReferenceRule;
  /** null where the lever is unknown [m] */
  readonly heightM: number | null;
  readonly heightUM: number | null;
  /** repetitions of the set that gave it, from 1; empty when practice raises did */
  readonly fromRepetitions: readonly number[];
  readonly raised: boolean;
  /**
   * relative standard uncertainty apart from what all heights of the set share, where practice raises gave it: that of one from
   * repetitions follows from these; absent there, and in reports of earlier versions [-]
   */
  readonly ownRelativeU?: number;
}

/** Where the test ended by the rules that the trace can show. */
export interface TestEnd {
  readonly rule: 'last-repetition' | 'consecutive-faults' | 'repetition-cap' | 'fixed-count' | 'duration';
  readonly kind: FaultKind | null;
  /** last repetition that belongs to the test, from 1; 0 when there is none */
  readonly atRepetition: number;
  readonly atS: number | null;
  readonly reasonGiven: EndReason | null;
  readonly class: 'capacity' | 'tolerance' | 'incomplete' | 'censored' | 'probe' | 'unknown';
}

export interface SetMeasures {
  /** repetitions whose height or rise could be judged; sums and means run over these */
  readonly heightsMeasured: number;
  readonly timeToEndS: number | null;
  readonly peakHeightM: number | null;
  readonly meanHeightM: number | null;
  readonly firstThreeHeightM: number | null;
  readonly lastThreeHeightM: number | null;
  readonly displacementM: Estimate | null;
  readonly scoredDisplacementM: Estimate | null;
  readonly work: Work;
  readonly scoredWork: Work;
  readonly meanPowerW: number | null;
  readonly peakPowerW: number | null;
  readonly timeUnderTensionS: number | null;
  readonly tempo: SetTempo;
  readonly fatigue: HeightFade;
  /** repetitions that reach a share of the highest one; null where no height was measured */
  readonly countAtFraction: readonly { readonly fraction: number; readonly count: number | null }[];
}

/** Why no load for so many repetitions is named. */
export type NoMaximumReason =
  /** the load is not given */
  | 'no-load'
  /** fewer or more valid repetitions than it may be read from */
  | 'count-out-of-range'
  /** the set ended for another reason than that no more were possible */
  | 'not-to-fatigue'
  /** nobody said why the set ended */
  | 'end-unknown';

/** A seated test at a load: what was lifted how often, and the load for so many repetitions where that may be said. */
export interface SeatedLoad {
  /** load on the knee; null where it is not given */
  readonly massKg: number | null;
  readonly massUKg: number | null;
  readonly percentOfBodyMass: number | null;
  /** valid repetitions at that load, before the test ended, with 95 % bounds */
  readonly repetitions: number;
  readonly repetitionsLow: number;
  readonly repetitionsHigh: number;
  readonly maximum: {
    /** for so many repetitions */
    readonly target: number;
    readonly massKg: number | null;
    /** what two formulas and the bounds of the count, within its range, leave open */
    readonly lowKg: number | null;
    readonly highKg: number | null;
    readonly reason: NoMaximumReason | null;
  };
}

/** Whether the effort was one that shows capacity; the words are neutral on purpose. */
export interface Effort {
  readonly good: Verdict;
  readonly signs: readonly ('height-drop' | 'tempo-lengthening')[];
  readonly reason: 'signs-of-fatigue' | 'stopped-before-signs-of-fatigue' | 'not-a-capacity-test' | 'too-little-known';
}

/** Whether the trial may be interpreted at all, before any comparison. */
export interface Gate {
  readonly usable: Verdict;
  readonly reasons: readonly GateReason[];
}

export type GateReason =
  /** the signal is invalid over some of the set */
  | 'invalid-signal'
  /** the signal is doubtful over some of the set */
  | 'doubtful-signal'
  /** more of the set is lost in gaps than the rule allows */
  | 'gaps'
  /** the side is not given */
  | 'side-unknown'
  /** no repetition was found */
  | 'no-repetition';

/** A repetition that the block pass saw otherwise than the final pass. */
export interface BlockDifference {
  readonly kind: 'only-final' | 'only-block' | 'top-moved';
  /** number in the final list, from 1 */
  readonly repetition: number | null;
  readonly finalTopS: number | null;
  readonly blockTopS: number | null;
}

/** Everything that is known about one set, ready for JSON: no NaN, no infinity, null for not measured. */
export interface Report {
  readonly placement: Placement;
  readonly side: Side | null;
  readonly protocol: { readonly id: string; readonly version: string; readonly fingerprint: string };
  /** whether heights are of the heel or rises of the body; neither where somebody counted by hand */
  readonly kind: Motion['kind'] | 'not-measured';
  readonly repetitions: readonly AssessedRepetition[];
  readonly doubtful: readonly Doubtful[];
  readonly count: Count;
  readonly reference: Reference | null;
  readonly end: TestEnd;
  readonly measures: SetMeasures;
  readonly effort: Effort;
  /** null where the protocol has no load on the knee */
  readonly seated: SeatedLoad | null;
  readonly gate: Gate;
  /** quiet stance before the set; null when there was none */
  readonly stance: Interval | null;
  readonly bodyWeightN: number | null;
  readonly bodyWeightUN: number | null;
  /** why figures are null */
  readonly withheld: readonly WithheldReason[];
  readonly issues: readonly Issue[];
  readonly blockDifferences: readonly BlockDifference[];
}

export type WithheldReason =
  /** heights, rise, work and power: somebody counted by hand, and nothing else was measured */
  | 'counted-by-hand'
  /** heights and everything in metres: the lever of the heel is not given */
  | 'no-heel-lever'
  /** work and power: the body mass is not given */
  | 'no-body-mass'
  /** work and power: the protocol has an external load whose mass is not given */
  | 'no-external-mass'
  /** ankle work: the lever and angle of the ankle are not given */
  | 'no-ankle-geometry'
  /** seated: the load on the knee is not given */
  | 'no-load'
  /** seated: work, because the rise of the knee follows from the lever and the angle of the ankle */
  | 'no-knee-rise'
  /** seated: the load as a share of body mass, or from such a share */
  | 'no-mass-for-load';
