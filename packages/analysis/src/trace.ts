/** What a channel measures. Values are in SI units, or degrees where the name says so. */
export type Quantity =
  /** vertical force under the foot or along a load cell [N] */
  | 'force'
  /** height of the heel above its level at rest [m] */
  | 'heel-height'
  /** specific force of an accelerometer: gravity included [m/s2] */
  | 'acceleration'
  /** angular velocity [rad/s] */
  | 'angular-velocity'
  /** moment about the ankle axis [N.m] */
  | 'torque'
  /** joint or plate angle [rad] */
  | 'angle'
  /** somebody counts by hand: change of the count at that instant, 1 for a tap, -1 where the last one is taken back, 0 where the counting begins and ends [1] */
  | 'tap';

/** Sensor axis of a vector quantity; `null` for a scalar. */
export type Axis = 'x' | 'y' | 'z' | null;

/** Where the sensor sits. */
export type SensedPlacement = 'heel' | 'foot' | 'trunk' | 'platform';

/** How a set is seen: by a sensor at its place, or by somebody who counts by hand. */
export type Placement = SensedPlacement | 'hand';

/** Anatomical side. */
export type Side = 'left' | 'right';

/** One column of samples, in the unit that {@link Quantity} names; same length as its group's times. */
export interface Channel {
  readonly quantity: Quantity;
  readonly axis: Axis;
  readonly samples: Float64Array;
}

/** Channels that share one clock: native sample times, strictly rising, uneven allowed [s]. */
export interface ChannelGroup {
  readonly timesS: Float64Array;
  readonly channels: readonly Channel[];
}

/** A recording as the analysis sees it: numbers in SI units with their own times. */
export interface Trace {
  readonly groups: readonly ChannelGroup[];
}
