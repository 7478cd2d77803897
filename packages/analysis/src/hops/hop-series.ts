import type { Figure } from '../efforts/figure.ts';
import type { Hop } from './hop.ts';
import type { HopMeasure, HopMeasureName } from './hop-summary.ts';

/** Whether there is a hop series at all. */
export type SeriesVerdict = 'yes' | 'no' | 'cannot_tell';

/** Why there is none, or why that cannot be told. */
export type NoSeriesReason =
  /** the force is never that of an empty platform, or the foot never in free flight, often enough in a row */
  | 'no-hops'
  /** the mean force is not the weight of the person: a hand, another foot, another movement */
  | 'weight-differs'
  /** the platform was not zeroed, or the force has another unit */
  | 'not-zeroed'
  /** too few samples a second to see a flight at all */
  | 'rate-too-low'
  /** the foot turns and is thrown as in walking or running */
  | 'unlike-hops'
  /** hops are counted, but without their times they cannot be told from strides */
  | 'strides-possible';

/** Why figures are null. */
export type HopWithheld =
  /** times and what follows from them: fewer samples a second than the protocol asks for */
  | 'low-rate'
  /** times and what follows from them: the accelerometer alone does not show take-off */
  | 'no-gyroscope'
  /** the same: the foot turned about no clear axis */
  | 'unclear-turn'
  /** stiffness: the body mass is not given */
  | 'no-body-mass'
  /** means and drift: the series ends before the hops that are analysed */
  | 'too-few-hops';

/** Something that a reader of a hop series must mind. */
export type HopCaution =
  /** always: a ratio of the legs that looks normal is no clearance */
  | 'ratio-is-no-clearance'
  /** always: a trace does not show which leg hopped, or whether it was one */
  | 'leg-not-seen'
  /** fewer hops than the protocol asks for */
  | 'fewer-than-asked'
  /** more hops than the protocol asks for: none beyond is analysed */
  | 'more-than-asked'
  /** stops on the ground in the middle of the series */
  | 'interrupted'
  /** samples are missing inside the series */
  | 'gaps'
  /** contact and flight come from a sensor on the foot: known from simulation only */
  | 'times-by-foot-sensor'
  /** the weight by the hops is not that of the given mass */
  | 'mass-differs';

/** Everything that is known about one hop series, ready for JSON. */
export interface HopSeries {
  readonly found: SeriesVerdict;
  readonly reason: NoSeriesReason | null;
  readonly sampleRateHz: number;
  readonly hops: readonly Hop[];
  readonly count: {
    readonly hops: number;
    /** bounds: a gap may hide hops */
    readonly low: number;
    readonly high: number;
    readonly analysed: number;
    /** as many as the protocol asks for */
    readonly complete: SeriesVerdict;
  };
  readonly measures: Readonly<Record<HopMeasureName, HopMeasure>>;
  /** weight by the hops themselves, on a platform [N] */
  readonly bodyWeightN: Figure | null;
  /** reading of the empty platform [N] */
  readonly zeroN: number | null;
  readonly massKg: Figure | null;
  readonly withheld: readonly HopWithheld[];
  readonly cautions: readonly HopCaution[];
}
