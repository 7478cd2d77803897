import type { Issue } from '../issue.ts';
import type { Interval } from '../signal/intervals.ts';

/**
 * What moved, on a regular grid: the height of the heel (placements heel and foot) or the rise of the body (trunk and
 * platform) above the floor of the set, NaN where nothing can be said.
 */
export interface Motion {
  readonly kind: 'heel-height' | 'body-rise';
  /** time of the first sample, on the recording's clock [s] */
  readonly startS: number;
  readonly sampleRateHz: number;
  /** height above the floor of the set, filtered zero-lag [m] */
  readonly heightM: Float64Array;
  /** spans without samples longer than the gap rule allows [s] */
  readonly gaps: readonly Interval[];
  /** vertical force under the foot on the same grid, platform only [N] */
  readonly forceN?: Float64Array;
  /** magnitude of the specific force minus gravity on the same grid, trunk and foot only [m/s2] */
  readonly accelerationExcess?: Float64Array;
  /** elevation of the foot line above its level at rest on the same grid, foot only [rad] */
  readonly pitchRad?: Float64Array;
  /** pitch of the trunk from its posture at rest on the same grid, trunk only [rad] */
  readonly trunkPitchRad?: Float64Array;
}

/** One attempted repetition: bottom, top, bottom. Standard uncertainties end in U. */
export interface Raise {
  /** leaving the bottom [s] */
  readonly startS: number;
  readonly startUS: number;
  /** the instant of greatest height [s] */
  readonly topS: number;
  readonly topUS: number;
  /** back at the bottom [s] */
  readonly endS: number;
  readonly endUS: number;
  /** the hold at the top: from, to [s] */
  readonly highFromS: number;
  readonly highToS: number;
  /** greatest height of heel or rise of body above the floor of the set [m] */
  readonly heightM: number;
  readonly heightUM: number;
  /** level of the bottom before and after, above the floor of the set; undefined where not observable [m] */
  readonly lowBeforeM?: number;
  readonly lowAfterM?: number;
  /** probability that this is a repetition of the set at all, 0 to 1 */
  readonly probability: number;
  /** longest stretch without samples between start and end [s] */
  readonly longestGapS: number;
  /** the top lies in a gap longer than the rule: its height cannot be judged */
  readonly topInGap: boolean;
}

/** A movement that was looked at and not counted, with how near it came. */
export interface Doubtful {
  readonly startS: number;
  readonly topS: number;
  readonly endS: number;
  readonly heightM: number;
  /** probability that it was a repetition after all, 0 to 0.5 */
  readonly probability: number;
  readonly reason: DoubtReason;
}

export type DoubtReason =
  /** lower than the least height of a repetition */
  | 'too-small'
  /** quicker than the least cycle of a repetition */
  | 'too-quick'
  /** higher or further below the floor than the foot lever allows, or the foot travelled: a step or a stride */
  | 'stride'
  /** the movement starts or ends at speed: a string hooked on or pulled */
  | 'starts-at-speed'
  /** unlike the other repetitions of the set in height, width or carriage */
  | 'unlike-the-set'
  /** outside the bout that was taken as the set */
  | 'outside-the-set'
  /** sampled paths hold it too rarely (trunk, platform) */
  | 'improbable';

/** The final pass over one recording: the attempted repetitions of the set, and how sure. */
export interface Detection {
  readonly raises: readonly Raise[];
  readonly doubtful: readonly Doubtful[];
  /** 95 % bounds of the number of attempted repetitions */
  readonly countLow: number;
  readonly countHigh: number;
  readonly motion: Motion;
  /** quiet stance before the set; undefined when there was none */
  readonly stance: Interval | undefined;
  /** standard deviation of the height while standing still [m] */
  readonly stillSdM: number;
  /** true when no heel lever was given and a usual one stands in: count and times hold, heights in metres do not */
  readonly leverAssumed?: boolean;
  /** body weight read from the stance, platform only [N] */
  readonly bodyWeightN?: number;
  readonly bodyWeightUN?: number;
  readonly issues: readonly Issue[];
}
