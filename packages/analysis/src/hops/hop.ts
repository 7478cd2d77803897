import type { Figure } from '../efforts/figure.ts';

/** When the foot meets or leaves the ground. The shared part errs alike in every hop of the recording. */
export interface HopEdge {
  readonly atS: number;
  readonly ownUS: number;
  readonly sharedUS: number;
}

/** A time in the air between two contacts; an edge is null where it is not seen. */
export interface Flight {
  readonly takeOff: HopEdge | null;
  readonly landing: HopEdge | null;
  /** a place inside it [s] */
  readonly middleS: number;
}

/** Why a hop has no contact time, or no times at all. */
export type HopReason =
  /** it begins from standing, or after a stop on the ground */
  | 'from-standing'
  /** samples are missing at an edge */
  | 'gap'
  /** the recording cannot show its edges */
  | 'not-seen';

/** One hop: the contact before its flight, and the flight. Null where it was not measured. */
export interface Hop {
  /** from 1 */
  readonly index: number;
  /** touching down before it [s] */
  readonly landS: number | null;
  readonly takeOffS: number | null;
  /** touching down after it [s] */
  readonly landsAgainS: number | null;
  /** a place inside the flight [s] */
  readonly middleS: number;
  readonly contactS: Figure | null;
  readonly flightS: Figure | null;
  /** from touching down to touching down again */
  readonly periodS: Figure | null;
  /** g t_f^2 / 8 */
  readonly heightM: Figure | null;
  /** time in the air over time on the ground */
  readonly ratio: Figure | null;
  readonly stiffnessNpm: Figure | null;
  /** one of those that means and drift are taken from */
  readonly analysed: boolean;
  readonly reason: HopReason | null;
}
