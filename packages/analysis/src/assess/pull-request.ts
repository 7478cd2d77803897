import type { EndReason, PullProtocol } from '@surae/shared';
import type { EffortRequest } from '../efforts/find-efforts.ts';
import type { Side } from '../trace.ts';

/**
 * Where an isometric effort is measured: a cell in line with the push (over the thigh, in a chain, in a strap, or a
 * dynamometer), which reads the push alone, or a plate under the forefoot, which also reads what rests on it.
 */
export type PullPlacement = 'inline' | 'platform';

/** What is known about the person and the rig; what is missing is withheld from the results, never assumed. */
export interface PullSubject {
  readonly bodyMassKg?: number;
  /** ankle axis to the line of the force under the forefoot, across it, measured with a tape [m] */
  readonly forefootLeverM?: number;
  /** relative standard uncertainty of the calibration of the sensor: of the slope that its forces are counted by [-] */
  readonly calibrationRelativeU?: number;
  /** standard uncertainty of the zero that its forces are counted from [N or N.m] */
  readonly calibrationZeroU?: number;
  /** correlation of that zero with the slope, -1 to 1; left out counts as none, which is cautious for a line through loads [-] */
  readonly calibrationCorrelation?: number;
  /** what the calibration is known by: forces with the same name share its error, and a ratio of them is free of it */
  readonly calibrationId?: string;
  /** end of the range of the sensor, each way [N or N.m] */
  readonly sensorLimit?: number;
  /** which way the reading goes when somebody pulls; left out, the signal tells it */
  readonly polarity?: EffortRequest['polarity'];
}

/** What is known about the trial beyond the trace. */
export interface PullContext {
  readonly endReason?: EndReason;
  /** times at which the tester saw heel or hip lift; left out when nobody looked [s] */
  readonly liftedAtS?: readonly number[];
  /** how many of the first pushes of the recording were warm-ups; left out when nobody said */
  readonly warmUpPushes?: number;
}

/** What one assessment of isometric efforts is asked. */
export interface PullTestRequest {
  readonly placement: PullPlacement;
  readonly side?: Side;
  readonly protocol: PullProtocol;
  readonly subject: PullSubject;
  readonly context?: PullContext;
}
