/** What a sensor can give. */
export type SensorQuantity = 'heel-height' | 'acceleration' | 'angular-velocity' | 'force' | 'torque' | 'angle';

/** Where a sensor sits; in line with a push is a cell over the thigh, in a strap or in a chain. */
export type SensorPlacement = 'heel' | 'foot' | 'trunk' | 'platform' | 'inline';

/** What a source gives: a quantity of a sensor, or the taps of somebody who counts by hand. */
export type SourceQuantity = SensorQuantity | 'tap';

/** Where a source is: the place of a sensor, or the hand of somebody who counts. */
export type SourcePlacement = SensorPlacement | 'hand';
